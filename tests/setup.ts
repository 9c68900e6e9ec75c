import fc from "fast-check";
import { propertyRuns } from "./seed.ts";

fc.configureGlobal(propertyRuns);
