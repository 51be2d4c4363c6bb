/** How far a device has read: in which life of the database, with which rights, and up to which record. */
export interface Cursor {
  readonly epoch: string;
  /** Of the scope it was read with. */
  readonly mark: string;
  readonly seq: number;
  /** The record at that number; empty at the beginning. */
  readonly id: string;
}

const FORM = /^([a-z0-9]{1,32})~([a-f0-9]{8})~(\d{1,15})~([A-Za-z0-9._:-]{0,64})$/;

export const writeCursor = ({ epoch, mark, seq, id }: Cursor): string => `${epoch}~${mark}~${seq}~${id}`;

/** Null for a text that we did not write. */
export function readCursor(text: string): Cursor | null {
  const found = FORM.exec(text);
  if (found === null) return null;
  const [, epoch, mark, seq, id] = found as unknown as [string, string, string, string, string];
  return { epoch, mark, seq: Number(seq), id };
}
