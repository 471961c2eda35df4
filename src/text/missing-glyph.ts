import type { FaceName } from './glyph-run.ts';

const codePoint = (character: string): string =>
  `U+${(character.codePointAt(0) ?? 0).toString(16).toUpperCase().padStart(4, '0')}`;

/** A text asks for characters that the face does not have. */
export class MissingGlyphError extends Error {
  readonly characters: readonly string[];
  readonly text: string;
  readonly face: FaceName;

  constructor(characters: readonly string[], text: string, face: FaceName) {
    const list = characters.map(character => `${codePoint(character)} (${character})`).join(', ');
    super(`the ${face} face has no glyph for ${list} in "${text}"`);
    this.name = 'MissingGlyphError';
    this.characters = characters;
    this.text = text;
    this.face = face;
  }
}
