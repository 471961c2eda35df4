import type { UnCorrections } from './_allocation-un.ts';

interface Entry {
  readonly text: string;
  readonly group?: string;
  readonly fields?: Readonly<Record<string, { readonly named?: string; readonly note?: string }>>;
  readonly fieldsOf?: string;
  readonly source?: string;
}

interface StatementFile {
  readonly filling: unknown;
  readonly hazard: Readonly<Record<string, Entry>>;
  readonly precautionary: Readonly<Record<string, Entry>>;
}

/**
 * Statements of GHS Rev. 11: the texts of the US rule in the spelling of the UN, precautions with the capitals of
 * CLP Annex IV, and the texts that are new since Rev. 7.
 */
export function unStatements(corrections: UnCorrections, us: StatementFile, eu: StatementFile, tsv: string) {
  const spelled = (text: string) => text.replaceAll('vapor', 'vapour').replaceAll('Vapor', 'Vapour');
  // Brackets around the organs are of the US rule alone.
  const unnamed = ({ fields }: Entry) =>
    fields && {
      fields: Object.fromEntries(
        Object.entries(fields).map(([name, { named: _, note: __, ...field }]) => [name, field]),
      ),
    };
  const printed = Object.fromEntries(
    tsv
      .split('\n')
      .map(line => line.split('\t'))
      .filter(
        ([code, text]) =>
          /^H(350i|36[01][FDfd]+|30[35]|31[36]|333|30\d\+H\d|4\d\d)/.test(code ?? '') && !!text,
      )
      .map(
        ([code = '', text = '']) =>
          [code, { text: text.trim().replace(/\.$/, ''), source: 'rev11-file' }] as const,
      ),
  );
  const hazard = {
    ...Object.fromEntries(
      Object.entries(us.hazard)
        .filter(([code]) => /^H\d/.test(code))
        .map(([code, entry]) => [code, { ...entry, text: spelled(entry.text), ...unnamed(entry) }]),
    ),
    ...corrections.statements.hazard,
    ...printed,
  };
  const old = Object.entries(eu.precautionary).filter(
    ([code]) => !corrections.statements.dropped.includes(code),
  );
  const added = Object.entries(corrections.statements.new as Record<string, Entry>).map(([code, entry]) => {
    const { fieldsOf, ...rest } = entry;
    return [
      code,
      { ...rest, ...(fieldsOf && { fields: eu.precautionary[fieldsOf]?.fields }), source: 'rev11-file' },
    ] as const;
  });
  return {
    instrument: corrections.instrument,
    retrieved: corrections.checkedOn,
    sources: {
      'rev11-file': { title: 'GHS classification data file of PubChem, slips corrected', read: true },
      others: {
        title: 'sources of the same names in us-hcs/statements.json and eu-clp/statements.json',
        read: true,
      },
    },
    filling: us.filling,
    hazard,
    supplemental: {},
    precautionary: Object.fromEntries([...old, ...added]) as Record<string, Entry>,
  };
}
