import { test as base } from "@playwright/test";

export { type Browser, expect, type Page } from "@playwright/test";

/**
 * Playwright's `test` that also fails where any page of the browser, or its worker, threw an error nobody caught or
 * wrote one to the console.
 */
export const test = base.extend<{ quiet: undefined }>({
  quiet: [
    async ({ context }, use) => {
      const errors: string[] = [];
      context.on("weberror", (web) => errors.push(`${web.page()?.url()}: ${web.error().message}`));
      context.on("console", (message) => {
        if (message.type() === "error") errors.push(`${message.location().url}: ${message.text()}`);
      });
      await use(undefined);
      base.expect(errors, "errors of the page or on its console").toEqual([]);
    },
    { auto: true },
  ],
});
