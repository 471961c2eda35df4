import type { OutputFact } from '../../store/facts.ts';

/** A fact about an output folder in words: what is so, and what would be right. */
export interface OutputWords {
  readonly message: string;
  readonly hint?: string;
}

const again = 'make the packet again';

/** What is to be said about an output folder. */
export function outputWords(fact: OutputFact): OutputWords {
  switch (fact.id) {
    case 'other-record':
      return {
        message: `the folder belongs to another record: ${fact.record}, code ${fact.code}`,
        hint: 'name another folder with --out, or give the product a code of its own',
      };
    case 'file-changed':
      return {
        message: `${fact.name} was changed by hand and is not overwritten`,
        hint: 'keep the change elsewhere, or run again with --replace, which moves the file aside',
      };
    case 'file-in-the-way':
      return {
        message: `${fact.name} stands there already and no run made it; it is not overwritten`,
        hint: 'move it away, or run again with --replace, which moves it aside',
      };
    case 'moved-aside':
      return { message: `${fact.name} was changed by hand; it is now ${fact.to}` };
    case 'removed':
      return { message: `${fact.name} was no longer current and is gone` };
    case 'no-manifest':
      return { message: 'no packet stands there', hint: again };
    case 'manifest-unreadable':
      return { message: 'manifest.json is no manifest of this program', hint: again };
    case 'interrupted':
      return {
        message: 'a run was interrupted while it switched the packet: files of two packets may stand there',
        hint: again,
      };
    case 'out-of-date':
      return { message: `the packet is out of date: ${fact.reason}`, hint: again };
    case 'not-made':
      return { message: `${fact.name} could not be made: ${fact.reason}` };
    case 'file-missing':
      return { message: `${fact.name} is missing`, hint: again };
    case 'mixture':
      return { message: `${fact.name} was made from other inputs than the rest`, hint: again };
    case 'stray':
      return {
        message: `${fact.name} is no part of the packet and was made from other inputs`,
        hint: 'remove it',
      };
    case 'record-changed':
      return { message: 'the record has changed since the packet was made', hint: again };
    case 'include-changed':
      return { message: `${fact.path} has changed since the packet was made`, hint: again };
    case 'include-new':
      return { message: `${fact.path} was not named when the packet was made`, hint: again };
    case 'include-gone':
      return { message: `${fact.path} is no longer named, and was when the packet was made`, hint: again };
    case 'law-changed':
      return { message: 'the data of the law have changed since the packet was made', hint: again };
    case 'program-changed':
      return {
        message: `the packet was made by version ${fact.made}; this is ${fact.now}${fact.made === fact.now ? ' with other templates' : ''}`,
        hint: again,
      };
  }
}
