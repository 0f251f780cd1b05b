import { deflateSync, strFromU8, strToU8 } from "fflate";
import { fail, ok, type Count, type Result } from "../../base/index.ts";
import { inflateBounded } from "../bounded-inflate.ts";
import type { Project, ProjectReading } from "./project-types.ts";
import { readProject } from "./read-project.ts";
import { writeProject } from "./write-project.ts";

/** How a link packs a project; stands first in it. */
const PACKING = "1";
/** Longest link that is read; browsers and mail programs cut far earlier. */
const MOST_LINK_CHARACTERS: Count = 65_536;
/** Most bytes a link may hold once unpacked. */
const MOST_BYTES: Count = 1_000_000;

/**
 * A project as the fragment of an address: the question and the kept voicings, without undo history
 * and settings. Nothing leaves the user's machine but by the link itself.
 * @param project - the project
 * @returns letters, digits, "-", "_" and one dot; without "#"; or the problem "link-too-large"
 * @source IETF RFC 4648, section 5 (base64url); RFC 1951 (deflate)
 */
export function writeShareLink(project: Project): Result<string> {
  const bytes = strToU8(writeProject({ ...project, settings: {} }));
  const link = `${PACKING}.${toBase64Url(deflateSync(bytes, { level: 9 }))}`;
  if (bytes.length <= MOST_BYTES && link.length <= MOST_LINK_CHARACTERS) return ok(link);
  return fail(
    "link-too-large",
    "This project is too large for a link: let some kept voicings go, or save it as a file and send that.",
  );
}

/**
 * Reads a project out of the fragment of an address. Size is bounded before and while it is
 * unpacked; what comes out is checked like a project file and never run.
 * @param fragment - with or without "#"
 * @returns the project, or the problem: "link-too-long", "link-unknown", "link-damaged", or those of
 *   readProject
 */
export function readShareLink(fragment: string): Result<ProjectReading> {
  const body = fragment.replace(/^#/, "");
  if (body.length > MOST_LINK_CHARACTERS)
    return fail("link-too-long", "The link is too long to be one of ours.");
  const [, packing, data] = /^(\d{1,3})\.([\w-]*)$/.exec(body) ?? [];
  if (packing === undefined || data === undefined)
    return fail("link-damaged", "The link is damaged: copy it again as a whole.");
  if (packing !== PACKING)
    return fail("link-unknown", "The link was made by a newer version of this page.");
  const packed = fromBase64Url(data);
  const inflated = packed && inflateBounded(packed, MOST_BYTES);
  if (inflated?.ok !== true) {
    const isTooLarge = inflated?.why === "too-large";
    return isTooLarge
      ? fail("link-too-long", "The link holds more than a project can.")
      : fail("link-damaged", "The link is damaged or was cut off: copy it again as a whole.");
  }
  return readProject(strFromU8(inflated.bytes));
}

function toBase64Url(bytes: Uint8Array): string {
  return btoa(strFromU8(bytes, true)).replace(/\+/g, "-").replace(/\//g, "_").replace(/=+$/, "");
}

function fromBase64Url(text: string): Uint8Array | undefined {
  try {
    return strToU8(atob(text.replace(/-/g, "+").replace(/_/g, "/")), true);
  } catch {
    return undefined;
  }
}
