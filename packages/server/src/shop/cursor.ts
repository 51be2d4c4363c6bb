/** How far a device has read: in which life of the database, with which rights, and up to which record. */
export interface Cursor {
  readonly epoch: string;
  /** Of the scope it was read with. */
  readonly scope: string;
  readonly seq: number;
  /** Of the arrival that got that number: drawn anew each time, so the same record put back later has another. */
  readonly mark: string;
}

const FORM = /^([a-z0-9]{1,32})~([a-f0-9]{8})~(\d{1,15})~([a-z0-9]{0,16})$/;

export const writeCursor = ({ epoch, scope, seq, mark }: Cursor): string =>
  `${epoch}~${scope}~${seq}~${mark}`;

/** Null for a text that we did not write. */
export function readCursor(text: string): Cursor | null {
  const found = FORM.exec(text);
  if (found === null) return null;
  const [, epoch, scope, seq, mark] = found as unknown as [string, string, string, string, string];
  return { epoch, scope, seq: Number(seq), mark };
}
