// Written by `npm run generate` from the files of commands/. Do not edit.
import type { ListedCommand } from './command.ts';

/** Every command with what it does; a command is loaded when it is called. */
export const commandList: readonly ListedCommand[] = [
  {
    name: 'init',
    does: 'writes starter records with comments',
    load: () => import('./commands/init.ts'),
  },
  {
    name: 'check',
    does: 'reads and validates records, expands the formula to constituents that sum to 100 %, reports unknowns',
    load: () => import('./commands/check.ts'),
  },
  {
    name: 'classify',
    does: 'classifies the mixture: every class with rule, paragraph and arithmetic',
    load: () => import('./commands/classify.ts'),
  },
  {
    name: 'headroom',
    does: 'tells how much of one constituent or raw material until a hazard or the label changes',
    load: () => import('./commands/headroom.ts'),
  },
  {
    name: 'batch',
    does: 'scales the formula to a batch ticket with order, cautions, lot and yield, and labels its raw materials',
    load: () => import('./commands/batch.ts'),
  },
  {
    name: 'label',
    does: 'drafts the label of a pack as a print-ready PDF: one page, die line on a layer of its own',
    load: () => import('./commands/label.ts'),
  },
  {
    name: 'reel',
    does: 'works out label, roll and order for the labeler, with a picture of the roll',
    load: () => import('./commands/reel.ts'),
  },
  {
    name: 'sds',
    does: 'drafts the safety data sheet as tagged PDF, web page and JSON',
    load: () => import('./commands/sds.ts'),
  },
  {
    name: 'case',
    does: 'drafts the label of a case for a roll printer, its marks, and the label and load of its pallet',
    load: () => import('./commands/case.ts'),
  },
  {
    name: 'gtin',
    does: 'checks, completes and converts GTIN-8, 12, 13 and 14, UPC-E and SSCC; lists the numbers of a folder',
    load: () => import('./commands/gtin.ts'),
  },
  {
    name: 'ship',
    does: 'gives the US transport description of a pack by highway and rail, and its packing limits',
    load: () => import('./commands/ship.ts'),
  },
  {
    name: 'packet',
    does: "makes everything for one product, with the reviewer's page",
    load: () => import('./commands/packet.ts'),
  },
  {
    name: 'catalog',
    does: 'makes the packets of all products of a folder, only what changed, and a page of their documents',
    load: () => import('./commands/catalog.ts'),
  },
  {
    name: 'help',
    does: 'explains a command, or a word of the trade',
    load: () => import('./commands/help.ts'),
  },
  {
    name: 'completion',
    does: 'prints what makes a shell complete commands and options',
    load: () => import('./commands/completion.ts'),
  },
];
