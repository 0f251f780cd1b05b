import { startAtlasClient, type AtlasClient } from "../atlas-client.ts";

let client: AtlasClient | undefined;

/**
 * The page's one worker, started when it is first needed.
 * @returns the client
 */
export function atlasLink(): AtlasClient {
  client ??= startAtlasClient();
  return client;
}
