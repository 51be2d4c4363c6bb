/** One channel of samples (±1) as a 16-bit WAV file. */
export function waveBytes(samples: Float32Array, rate: number): ArrayBuffer {
  const bytes = new ArrayBuffer(44 + 2 * samples.length);
  const view = new DataView(bytes);
  const text = (at: number, letters: string): void => {
    for (let i = 0; i < letters.length; i++) view.setUint8(at + i, letters.charCodeAt(i));
  };
  text(0, "RIFF");
  view.setUint32(4, 36 + 2 * samples.length, true);
  text(8, "WAVEfmt ");
  view.setUint32(16, 16, true);
  view.setUint16(20, 1, true);
  view.setUint16(22, 1, true);
  view.setUint32(24, rate, true);
  view.setUint32(28, 2 * rate, true);
  view.setUint16(32, 2, true);
  view.setUint16(34, 16, true);
  text(36, "data");
  view.setUint32(40, 2 * samples.length, true);
  for (let i = 0; i < samples.length; i++) {
    view.setInt16(44 + 2 * i, Math.max(-32768, Math.min(32767, Math.round(samples[i]! * 32767))), true);
  }
  return bytes;
}
