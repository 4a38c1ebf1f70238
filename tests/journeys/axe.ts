import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type { Page } from 'playwright/test';

const source = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');
interface Violation { readonly id: string; readonly nodes: readonly { readonly target: readonly string[] }[] }

/** Runs axe-core in the page, WCAG 2.2 A and AA and its best practices. */
export default class AxeBuilder {
  readonly #page: Page;
  constructor(page: Page) { this.#page = page; }
  async analyze(): Promise<{ readonly violations: readonly Violation[] }> {
    // evaluate is not stopped by the page's content policy, which forbids scripts from elsewhere.
    await this.#page.evaluate(source);
    return await this.#page.evaluate(async () => {
      const { axe } = globalThis as unknown as { axe: { run(root: unknown, options: unknown): Promise<{ violations: Violation[] }> } };
      const { violations } = await axe.run(document, { resultTypes: ['violations'] });
      return { violations: violations.map(({ id, nodes }) => ({ id, nodes: nodes.map(({ target }) => ({ target: target.map(String) })) })) };
    });
  }
}
