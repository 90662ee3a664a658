import { unitOf } from '../record/quantity-text.ts';

/** What a column of a table holds. */
export type ColumnKind = 'name' | 'copies' | 'size' | 'drive' | 'mass' | 'price' | 'location' | 'note';

export interface Column {
  readonly kind: ColumnKind;
  /** Unit of mass in the heading: 'weight (kg)'. */
  readonly unit: string | null;
}

/**
 * Heading words by column, English first, then German, French, Spanish, Portuguese, Italian, Dutch and Afrikaans. The
 * first column that answers to a kind is taken; more of them are read as part of the note.
 */
const HEADINGS: Readonly<Record<ColumnKind, readonly string[]>> = {
  name: (
    'name item items description desc tool tools thing things what article product part bezeichnung beschreibung ' +
    'benennung artikel werkzeug gegenstand nom désignation designation outil article objet nombre descripción ' +
    'descripcion herramienta objeto nome descrição descricao ferramenta item descrizione attrezzo oggetto naam omschrijving ' +
    'gereedschap beskrywing gereedskap'
  ).split(' '),
  copies: (
    'qty quantity count copies number no pcs pieces pce amount anzahl menge stück stueck stk quantité quantite qté qte ' +
    'cantidad cant unidades quantidade qtd quantità quantita aantal getal hoeveelheid'
  ).split(' '),
  size: 'size sizes dimension dimensions af sw größe groesse grösse maß schlüsselweite taille tamaño tamano medida tamanho misura maat grootte'.split(
    ' ',
  ),
  drive:
    'drive square antrieb vierkant carré carre entraînement entrainement cuadro encaixe attacco aandrijving'.split(
      ' ',
    ),
  mass: 'mass weight wt grams gram kg lbs gewicht gew masse poids peso massa gewig'.split(' '),
  price:
    'price cost value paid preis kosten wert prix coût cout precio coste preço preco prezzo costo prijs prys'.split(
      ' ',
    ),
  location:
    'location where bag box drawer berth stored storage place ort lagerort tasche kiste fach emplacement lieu sac ubicación ubicacion bolsa lugar local posizione borsa plaats tas plek sak'.split(
      ' ',
    ),
  note: 'note notes remark remarks comment comments bemerkung notiz anmerkung kommentar remarque commentaire nota notas observación observaciones obs osservazioni opmerking opmerkings'.split(
    ' ',
  ),
};

const KIND_BY_WORD: ReadonlyMap<string, ColumnKind> = new Map(
  Object.entries(HEADINGS).flatMap(([kind, words]) =>
    words.map((word) => [word, kind as ColumnKind] as const),
  ),
);

/** The kind of a column by its heading; null when the heading says nothing known. */
export function columnOf(heading: string): Column | null {
  const text = heading.toLowerCase().slice(0, 80);
  const words = text.match(/\p{L}+/gu) ?? [];
  const kind = words.map((word) => KIND_BY_WORD.get(word)).find((found) => found !== undefined);
  if (kind === undefined) return null;
  const unit = words.find((word) => unitOf(word)?.kind === 'mass') ?? null;
  return { kind, unit };
}

/**
 * The columns of a table by its first row: null when that row is no heading. A heading row has at least a name, and no cell
 * of it is a number.
 */
export function columnsOf(row: readonly string[]): readonly (Column | null)[] | null {
  if (row.some((cell) => /^\s*[\d.,]+\s*$/.test(cell)) || row.length === 0) return null;
  const found = row.map(columnOf);
  // Spanish 'nombre' is the name, French 'nombre' the count: where another column is the name it is a count.
  const names = found.flatMap((column, i) => (column?.kind === 'name' ? [i] : []));
  const columns = found.map((column, i): Column | null =>
    names.length > 1 && /^\s*nombre\s*$/i.test(row[i] ?? '') ? { kind: 'copies', unit: null } : column,
  );
  const long = row.some((cell) => cell.length > 60);
  const known = columns.filter((column) => column !== null).length;
  if (long || known === 0 || (known === 1 && row.length > 1)) return null;
  const seen = new Set<ColumnKind>();
  const first = columns.map((column): Column | null => {
    if (column === null) return null;
    if (seen.has(column.kind)) return { kind: 'note', unit: null };
    seen.add(column.kind);
    return column;
  });
  return seen.has('name') || seen.has('size') ? first : null;
}
