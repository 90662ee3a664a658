/** Part of a JSON Schema: its fields by name. */
type Part = ReadonlyMap<string, unknown>;

/** docs/answers.md: the JSON Schema of the answers as a page to read, one table for each answer and each part. */
export function answersMarkdown(schema: unknown): string {
  const whole = part(schema);
  const parts = new Map([...part(whole.get('$defs'))].map(([name, value]) => [name, part(value)]));
  const answers = list(whole.get('anyOf')).map((ref) => refOf(part(ref)));
  const others = [...parts.keys()].filter((name) => !answers.includes(name)).sort();
  const lines = [
    '# Answers',
    '',
    'Written by the build from apps/cli/src/schemas; edit those, not this page.',
    '',
    'With `--json` a command prints one JSON object. Its `schema` says which answer it is and in which version: a field may be',
    'added without a new version, none is removed or changed in meaning. For machines: [answers.schema.json](answers.schema.json).',
    'Masses that are chosen are whole grams, money whole cents, volumes whole millilitres ([why](design/quantities.md)); chances are',
    'probabilities from 0 to 1. A field marked *optional* may be absent. Refused input (exit code 1) prints no JSON: the',
    'sentences stand on standard error.',
    '',
    ...answers.flatMap((name) => section('##', name, parts)),
    '## Parts',
    '',
    ...others.flatMap((name) => section('###', name, parts)),
  ];
  return `${lines.join('\n').trimEnd()}\n`;
}

/** The named parts of the schema. */
type Parts = ReadonlyMap<string, Part>;

function section(level: '##' | '###', name: string, parts: Parts): readonly string[] {
  const schema = parts.get(name) ?? new Map<string, unknown>();
  const choices = choicesOf(schema);
  const tables =
    choices.length === 0
      ? table(rowsOf(schema, '', parts))
      : choices.flatMap((choice) =>
          choice.has('$ref') ? [`- ${typeOf(choice)}`] : [...table(rowsOf(choice, '', parts)), ''],
        );
  return [
    `${level} ${name}`,
    '',
    `${sentence(schema)}${choices.length === 0 ? '' : ' One of:'}`,
    '',
    ...tables,
    '',
  ];
}

interface Row {
  readonly field: string;
  readonly type: string;
  readonly means: string;
}

/** Fields of an object, those of unnamed objects inside it as `people[].name`. */
function rowsOf(schema: Part, before: string, parts: Parts): readonly Row[] {
  const required = list(schema.get('required'));
  return [...part(schema.get('properties'))].flatMap(([name, value]) => {
    const field = part(value);
    const optional = required.includes(name) ? '' : ' *optional*';
    const inner = within(field);
    return [
      {
        field: `\`${before}${name}\``,
        type: `${typeOf(field)}${optional}`,
        means: sentence(field) || sentence(parts.get(refOf(field))),
      },
      ...(inner === null ? [] : rowsOf(inner.schema, `${before}${name}${inner.marks}.`, parts)),
    ];
  });
}

/** The unnamed object inside a field: itself, the items of its list, the values of its record. */
function within(field: Part): { readonly schema: Part; readonly marks: string } | null {
  if (field.has('properties')) return { schema: field, marks: '' };
  if (field.size === 0) return null;
  for (const [key, marks] of [
    ['items', '[]'],
    ['additionalProperties', '{}'],
  ] as const) {
    const inner = within(part(field.get(key)));
    if (inner !== null) return { schema: inner.schema, marks: `${marks}${inner.marks}` };
  }
  for (const choice of choicesOf(field)) {
    const inner = within(choice);
    if (inner !== null) return inner;
  }
  return null;
}

function typeOf(schema: Part): string {
  const choices = choicesOf(schema);
  if (schema.has('$ref')) {
    const name = refOf(schema);
    return `[${name}](#${name.toLowerCase()})`;
  }
  if (choices.length > 0) return choices.map(typeOf).join(' or ');
  if (schema.has('const')) return constant(schema.get('const'));
  if (schema.has('enum')) return list(schema.get('enum')).map(constant).join(', ');
  switch (schema.get('type')) {
    case 'string':
      return 'text';
    case 'integer':
      return 'whole number';
    case 'boolean':
      return 'true or false';
    case 'null':
      return '`null`';
    case 'array':
      return `list of ${typeOf(part(schema.get('items')))}`;
    case 'object':
      return schema.has('properties')
        ? 'object'
        : `${typeOf(part(schema.get('additionalProperties')))} by name`;
    default:
      return String(schema.get('type'));
  }
}

function table(rows: readonly Row[]): readonly string[] {
  return [
    '| field | type | meaning |',
    '|---|---|---|',
    ...rows.map(({ field, type, means }) => `| ${[field, type, means].map(cell).join(' | ')} |`),
  ];
}

function cell(text: string): string {
  return text.replaceAll('|', '\\|');
}

function sentence(schema: Part | undefined): string {
  const said = schema?.get('description');
  return typeof said === 'string' ? `${said.replace(/\.$/, '')}.` : '';
}

function constant(value: unknown): string {
  return `\`${JSON.stringify(value)}\``;
}

function choicesOf(schema: Part): readonly Part[] {
  return [...list(schema.get('anyOf')), ...list(schema.get('oneOf'))].map(part);
}

function refOf(schema: Part): string {
  return String(schema.get('$ref')).replace('#/$defs/', '');
}

function part(value: unknown): Part {
  return new Map<string, unknown>(
    typeof value === 'object' && value !== null && !Array.isArray(value) ? Object.entries(value) : [],
  );
}

function list(value: unknown): readonly unknown[] {
  return Array.isArray(value) ? value : [];
}
