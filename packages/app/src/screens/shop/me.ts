/** Who this device is in its shop. */
export interface Me {
  readonly shopName: string;
  readonly personName: string;
  readonly role: "owner" | "technician" | "rider";
  readonly device: string;
}
