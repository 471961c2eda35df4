import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { type LabelInput, type LabelModel, labelDocument } from '../../../src/document/label.ts';
import { loadTemplate } from '../../../src/document/template.ts';
import type { TypeRules } from '../../../src/document/type-rules.ts';
import { readTemplate } from '../../../src/environment/package-files.ts';
import type { LabelElements } from '../../../src/labelling/label-elements.ts';
import { loadPressProfile, type Stock } from '../../../src/layout/stock.ts';
import { Exact } from '../../../src/quantity/exact.ts';

export const templates = join(fileURLToPath(import.meta.url), '../../../../templates');

/** Statements with the condition that each begins with, as the tables of statements hold it. */
export const withLeads = (statements: LabelElements['precautionaryStatements']) =>
  statements.map(statement => {
    const lead = /^(?:if|in case of) [^:.]+:/i.exec(statement.text)?.[0];
    return lead ? { ...statement, lead } : statement;
  });

/** A corrosive cleaner: hazard and precautionary statements as 29 CFR 1910.1200 App. C.4 words them. */
export const corrosive: LabelElements = {
  signalWord: 'Danger',
  pictograms: ['GHS05', 'GHS07'],
  hazardStatements: [
    { code: 'H314', text: 'Causes severe skin burns and eye damage.' },
    { code: 'H335', text: 'May cause respiratory irritation.' },
  ],
  precautionaryStatements: withLeads([
    { code: 'P260', group: 'prevention', text: 'Do not breathe mist, vapors or spray.' },
    { code: 'P264', group: 'prevention', text: 'Wash hands thoroughly after handling.' },
    { code: 'P271', group: 'prevention', text: 'Use only outdoors or in a well-ventilated area.' },
    {
      code: 'P280',
      group: 'prevention',
      text: 'Wear protective gloves, protective clothing, eye protection and face protection.',
    },
    { code: 'P301+P330+P331', group: 'response', text: 'IF SWALLOWED: Rinse mouth. Do NOT induce vomiting.' },
    {
      code: 'P303+P361+P353',
      group: 'response',
      text: 'IF ON SKIN (or hair): Take off immediately all contaminated clothing. Rinse skin with water or shower.',
    },
    {
      code: 'P304+P340',
      group: 'response',
      text: 'IF INHALED: Remove person to fresh air and keep comfortable for breathing.',
    },
    {
      code: 'P305+P351+P338',
      group: 'response',
      text: 'IF IN EYES: Rinse cautiously with water for several minutes. Remove contact lenses, if present and easy to do. Continue rinsing.',
    },
    { code: 'P310', group: 'response', text: 'Immediately call a poison center or doctor.' },
    {
      code: 'P321',
      group: 'response',
      text: 'Specific treatment (see first-aid instructions on this label).',
    },
    { code: 'P363', group: 'response', text: 'Wash contaminated clothing before reuse.' },
    {
      code: 'P403+P233',
      group: 'storage',
      text: 'Store in a well-ventilated place. Keep container tightly closed.',
    },
    { code: 'P405', group: 'storage', text: 'Store locked up.' },
    {
      code: 'P501',
      group: 'disposal',
      text: 'Dispose of contents and container in accordance with local regulations.',
    },
  ]),
  supplemental: [
    {
      code: 'unknown-acute',
      text: '3 % of the mixture consists of ingredients of unknown acute toxicity (oral).',
    },
  ],
  omitted: [],
  missing: [],
  conditional: [],
  proposed: [],
  unused: [],
};

/** Many pictograms and statements. */
export const severe: LabelElements = {
  ...corrosive,
  pictograms: ['GHS02', 'GHS05', 'GHS06', 'GHS08', 'GHS09'],
  hazardStatements: [
    { code: 'H225', text: 'Highly flammable liquid and vapor.' },
    { code: 'H301', text: 'Toxic if swallowed.' },
    ...corrosive.hazardStatements,
    { code: 'H370', text: 'Causes damage to organs (optic nerve).' },
    { code: 'H410', text: 'Very toxic to aquatic life with long lasting effects.' },
  ],
};

/** One mild hazard. */
export const mild: LabelElements = {
  signalWord: 'Warning',
  pictograms: ['GHS07'],
  hazardStatements: [{ code: 'H319', text: 'Causes serious eye irritation.' }],
  precautionaryStatements: corrosive.precautionaryStatements.filter(({ code }) =>
    ['P264', 'P305+P351+P338'].includes(code),
  ),
  supplemental: [],
  omitted: [],
  missing: [],
  conditional: [],
  proposed: [],
  unused: [],
};

export interface SampleOptions {
  readonly elements?: LabelElements;
  readonly draft?: boolean;
  readonly diameter?: number | null;
  readonly gtin?: string | null;
  readonly name?: string;
  readonly only?: 'precautions';
  readonly type?: TypeRules | null;
}

/** Invented product of an invented maker. */
export function sampleInput(options: SampleOptions = {}): LabelInput {
  const {
    elements = corrosive,
    draft = true,
    diameter = 88,
    gtin = '0614141000418',
    name = 'Kerbstone Patio Cleaner',
  } = options;
  return {
    record: {
      name,
      code: 'KP-946',
      maker: {
        name: 'Quarry Lane Products, Inc.',
        address: ['1200 Quarry Lane', 'Millbrook, OH 45000, USA'],
        telephone: '+1 555 010 0100',
        emergency: { telephone: '+1 555 010 0199', hours: '24 hours' },
        email: null,
        website: null,
      },
      copy: {
        tagline: 'Lifts grime and traffic film from stone',
        directions: ['Wet the surface.', 'Apply and leave for five minutes.', 'Rinse well.'],
      },
    },
    pack: {
      id: 'bottle-946',
      contents: { value: Exact.decimal('946'), unit: 'mL', written: '946 mL' },
      gtin,
      container: { shape: 'cylinder', diameter, labelPanelHeight: 150, childResistant: false },
      label: null,
      roll: null,
      case: null,
      lotWindow: null,
      at: { file: 'product.yaml' },
    },
    elements,
    draft,
    date: '2026-11-25T00:00:00Z',
    only: options.only,
    ...(options.type && { type: options.type }),
  };
}

export async function sampleModel(options: SampleOptions = {}): Promise<LabelModel> {
  return labelDocument(sampleInput(options), await loadTemplate(readTemplate, 'labels/us-workplace.hbs'));
}

export async function sampleStock(width: number, height: number): Promise<Stock> {
  const profile = await loadPressProfile(readTemplate);
  if (!profile.ok) throw new Error(profile.diagnostics.map(({ message }) => message).join('\n'));
  return { die: { width, height, cornerRadius: 3 }, profile: profile.value };
}
