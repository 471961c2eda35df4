/** A value of a fact; a list where several of one kind stand together. */
export type FactValue = string | number | readonly string[] | null;

/** One step of an answer: what was found, by which provision, with the values it rests on. Words come later. */
export interface Fact {
  readonly id: string;
  readonly cite: string;
  readonly values: Readonly<Record<string, FactValue>>;
}

export const fact = (id: string, cite: string, values: Fact['values'] = {}): Fact => ({ id, cite, values });
