const oneLine = (text: string): string => text.replace(/\s+/g, ' ');

/**
 * The form that a qualified person fills in about one product. It stands beside the record and is theirs.
 * @param record file name of the record.
 */
export const reviewForm = (product: { name: string; code: string }, record: string): string =>
  `# Review of ${oneLine(product.name)} (${oneLine(product.code)}), drafted from ${record}.
# This file is yours: it was written once, empty, and no run writes to it again.
labelwright: review/1
record: ${JSON.stringify(record)}
code: ${JSON.stringify(product.code)}
reviewed-by:        # name
qualification:      # what makes this person qualified
date:               # 2026-11-25
changes-asked-for: []
# - what is to be changed, and why
`;
