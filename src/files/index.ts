export { encodeWav, type WavFormat, type WavOptions } from "./wav.ts";
