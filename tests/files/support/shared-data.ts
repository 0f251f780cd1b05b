import { existsSync, readFileSync } from "node:fs";

/** Open data of others that lies beside the project; tests that need it are skipped without it. */
export const sharedData = "../shared/data";

/** Whether a folder or file of it is there. */
export const hasData = (path: string): boolean => existsSync(`${sharedData}/${path}`);

/** A file of it as text. */
export const dataText = (path: string): string => readFileSync(`${sharedData}/${path}`, "utf8");

/** A file of it as bytes. */
export const dataBytes = (path: string): Uint8Array => readFileSync(`${sharedData}/${path}`);
