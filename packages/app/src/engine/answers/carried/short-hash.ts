/** Six letters that differ when the text does, as far as chance allows (1 in 2^31); FNV-1a. Not for secrets. */
export function shortHash(text: string): string {
  let hash = 0x811c9dc5;
  for (let i = 0; i < text.length; i++) hash = Math.imul(hash ^ text.charCodeAt(i), 0x01000193);
  return ((hash >>> 0) % 36 ** 6).toString(36).padStart(6, "0");
}
