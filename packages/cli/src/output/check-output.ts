import * as z from "zod";
import { problemShape } from "./shapes.ts";

export const checkOutput = z
  .strictObject({
    command: z.literal("check"),
    v: z.literal(1),
    lines: z.int(),
    usedByKind: z.record(z.string(), z.int()),
    bikes: z.record(z.string(), z.int()).describe("Records that count, by bike"),
    faulty: z.int().describe("Kept as written, but nothing could be made of them"),
    repeated: z.int().describe("The same record met again"),
    newerVersion: z.int().describe("Of versions newer than this tool; kept"),
    unknownKinds: z.record(z.string(), z.int()).describe("Of kinds this tool does not know; kept"),
    problems: z.array(problemShape).describe("Something was left out"),
    notes: z.array(problemShape).describe("Nothing was left out, but worth a look"),
  })
  .describe("Answer of jetwright check");

export type CheckOutput = z.infer<typeof checkOutput>;
