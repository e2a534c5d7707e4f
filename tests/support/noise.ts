import type { BrowserContext, Page } from 'playwright-core';

export interface Noise {
  /** @param allowed what a test expects to be complained about, such as the network it has just cut */
  readonly assertQuiet: (allowed?: RegExp) => void;
}

/** Collects what must not happen while the app runs. Blocked by the policy counts: Chromium logs that as an error of the page. */
export function listen(context: BrowserContext, origin: string): Noise {
  const heard: string[] = [];
  const attend = (page: Page) => page.on('pageerror', (error) => heard.push(`thrown: ${error.stack ?? error.message}`));
  context.pages().forEach(attend);
  context.on('page', attend);
  context.on('console', (message) => {
    if (message.type() === 'error') heard.push(`console: ${message.text()} (${message.location().url})`);
  });
  context.on('request', (request) => {
    const { protocol, origin: asked } = new URL(request.url());
    if (protocol.startsWith('http') && asked !== origin) heard.push(`left the origin: ${request.url()}`);
  });
  return {
    assertQuiet: (allowed) => {
      const rest = heard.filter((line) => !allowed?.test(line));
      if (rest.length > 0) throw new Error(`The app was not quiet:\n${rest.join('\n')}`);
    },
  };
}
