import * as z from "zod";

/** What every command prints with --json when it cannot answer; the exit code is 2. */
export const refusedOutput = z
  .strictObject({
    refused: z.strictObject({
      reason: z.string().describe("Fixed word for programs"),
      detail: z.string().describe("What is wrong and what to do about it"),
    }),
  })
  .describe("Answer of any command that cannot answer");
