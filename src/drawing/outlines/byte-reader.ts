/** Reads big-endian numbers, as font files hold them. */
export class ByteReader {
  private readonly view: DataView;

  /** @param bytes - the file or a part of it */
  constructor(readonly bytes: Uint8Array) {
    this.view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  }

  /** @returns the unsigned number of 8 bits at a place */
  u8(at: number): number {
    return this.view.getUint8(at);
  }

  /** @returns the unsigned number of 16 bits at a place */
  u16(at: number): number {
    return this.view.getUint16(at);
  }

  /** @returns the signed number of 16 bits at a place */
  i16(at: number): number {
    return this.view.getInt16(at);
  }

  /** @returns the unsigned number of 32 bits at a place */
  u32(at: number): number {
    return this.view.getUint32(at);
  }

  /** @returns the unsigned number of 1 to 4 bytes at a place */
  sized(at: number, size: number): number {
    let value = 0;
    for (let byte = 0; byte < size; byte += 1) value = value * 256 + this.u8(at + byte);
    return value;
  }

  /** @returns the part between two places */
  part(from: number, to: number): Uint8Array {
    return this.bytes.subarray(from, to);
  }
}
