import axe from 'axe-core';
import { HtmlValidate, StaticConfigLoader } from 'html-validate';
import { JSDOM } from 'jsdom';

/**
 * What axe-core, the open checker of the Web Content Accessibility Guidelines, finds in a document without a screen.
 * What needs one, contrast and overlap, it cannot decide here.
 */
export async function accessibilityFaults(html: string): Promise<readonly string[]> {
  // Outlines of glyphs in drawings of labels are thousands of elements without meaning.
  const dom = new JSDOM(html.replace(/<path [^>]*>|<use [^>]*>/gu, ''), {
    runScripts: 'outside-only',
  });
  const { window } = dom;
  window.eval(axe.source);
  const found = (await window.eval(
    "axe.run(document, { rules: { 'color-contrast': { enabled: false } } })",
  )) as axe.AxeResults;
  window.close();
  return found.violations.map(
    ({ id, nodes }) => `${id}: ${nodes.map(node => node.html.slice(0, 80)).join(' | ')}`,
  );
}

const validator = new HtmlValidate(
  new StaticConfigLoader({
    extends: ['html-validate:recommended'],
    // HTML sets no limit; the rule is for lists of search results. A sheet is named with product, code and revision.
    rules: { 'long-title': 'off' },
  }),
);

/** What html-validate finds, by the content models and attributes of the HTML Living Standard and its recommended rules. */
export async function markupFaults(html: string): Promise<readonly string[]> {
  const { results } = await validator.validateString(html);
  return results
    .flatMap(({ messages }) => messages)
    .map(({ line, column, ruleId, message }) => `${line}:${column} ${ruleId}: ${message}`);
}
