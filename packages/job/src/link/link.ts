import { base64urlnopad } from "@scure/base";
import { deflateSync, strFromU8, strToU8 } from "fflate";
import type { Fault } from "../faults/fault.ts";
import { oneLine } from "../faults/show.ts";
import type { ParsedJob, Refused } from "../parseJob.ts";
import { jobSchema, type Job } from "../schema/job.ts";
import { parseJobText } from "../text/parseJobText.ts";
import { withoutDefaults } from "../text/withoutDefaults.ts";
import { crc32 } from "./crc32.ts";
import { dictionary } from "./dictionary.ts";
import { inflateUpTo } from "./inflate.ts";

const VERSION = "1";
/** Longest link text looked at, and most bytes of job that it may unpack to. */
const LONGEST = 400_000;
const MOST_BYTES = 1_000_000;
const CHECK_BYTES = 4;

/** A job out of a link, or what is wrong with it. */
export type Unpacked = ParsedJob | Refused;

const words = /* @__PURE__ */ strToU8(dictionary);

/**
 * A whole job as the fragment of a link: `1.` and base64url of a CRC-32 and the deflated JSON. Letters, digits, `-`, `_`
 * and `.` only, so it needs no escaping.
 */
export function packJob(job: Job): string {
  const text = JSON.stringify(withoutDefaults(jobSchema, jobSchema.parse(job)));
  const packed = deflateSync(strToU8(text), { level: 9, dictionary: words });
  const bytes = new Uint8Array(CHECK_BYTES + packed.length);
  new DataView(bytes.buffer).setUint32(0, crc32(packed));
  bytes.set(packed, CHECK_BYTES);
  return `${VERSION}.${base64urlnopad.encode(bytes)}`;
}

/**
 * The job of a link's fragment, with or without its `#`. Damage, a newer version and a link that would unpack to more
 * than 1 MB are told; what unpacks goes through the schema like any file. Never throws on bad input.
 */
export function unpackJob(fragment: string): Unpacked {
  if (fragment.length > LONGEST) return refused(fragment, `the link is longer than ${LONGEST} characters`);
  const [version, body, ...rest] = fragment.replace(/^#/, "").split(".");
  if (body === undefined || rest.length > 0) return refused(fragment, "the link holds no job");
  if (version !== VERSION) return refused(fragment, "the link was made by another version of this program");
  const packed = checked(body);
  if (packed === null) return refused(fragment, "the link is damaged or cut short; ask for it again");
  const bytes = inflateUpTo(packed, MOST_BYTES, words);
  if (bytes === null) return refused(fragment, `the link does not unpack to a job of at most ${MOST_BYTES} bytes`);
  return parseJobText(strFromU8(bytes));
}

/** The packed bytes, if they are what was packed. */
function checked(body: string): Uint8Array | null {
  try {
    const bytes = base64urlnopad.decode(body);
    if (bytes.length <= CHECK_BYTES) return null;
    const packed = bytes.subarray(CHECK_BYTES);
    return new DataView(bytes.buffer, bytes.byteOffset).getUint32(0) === crc32(packed) ? packed : null;
  } catch {
    return null;
  }
}

function refused(fragment: string, message: string): Refused {
  const fault: Fault = { path: "", given: oneLine(fragment), accepted: "a link made by this program", message };
  return { ok: false, faults: [fault] };
}
