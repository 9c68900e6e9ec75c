import * as z from "zod";
import { schemasAt } from "../schema/schemasAt.ts";
import type { Found } from "./fault.ts";

/** The schema's faults, with null among what is accepted where the field takes it: its messages are of what it wraps. */
export function orNull(found: readonly Found[], schema: z.core.$ZodType): Found[] {
  return found.map((fault) => {
    if (fault.says !== undefined || /\bnull$/.test(fault.accepted)) return fault;
    const takesNull = schemasAt(schema, fault.keys).some((each) => z.safeParse(each, null).success);
    return takesNull ? { ...fault, accepted: `${fault.accepted}, or null` } : fault;
  });
}
