const WIDTH = 300;

/** JSON with what fits on one line on one line, so that a dump is short and a change shows as few lines. */
export function json(value: unknown, indent = ''): string {
  const flat = oneLine(value);
  if (typeof value !== 'object' || value === null || indent.length + flat.length <= WIDTH) return flat;
  const inner = `${indent}  `;
  if (Array.isArray(value))
    return `[\n${value.map(each => inner + json(each, inner)).join(',\n')}\n${indent}]`;
  const members = Object.entries(value)
    .filter(([, each]) => each !== undefined)
    .map(([key, each]) => `${inner}${JSON.stringify(key)}: ${json(each, inner)}`);
  return `{\n${members.join(',\n')}\n${indent}}`;
}

function oneLine(value: unknown): string {
  if (Array.isArray(value)) return `[${value.map(oneLine).join(', ')}]`;
  if (typeof value !== 'object' || value === null) return JSON.stringify(value) ?? 'null';
  const members = Object.entries(value).filter(([, each]) => each !== undefined);
  return `{${members.map(([key, each]) => `${JSON.stringify(key)}: ${oneLine(each)}`).join(', ')}}`;
}
