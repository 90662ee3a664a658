import { crc32, deflateRawSync } from 'node:zlib';

/** A zip archive of texts, as spreadsheet programs write them. `claims` overrides the size a part says it has. */
export function zip(
  parts: Readonly<Record<string, string | Uint8Array>>,
  claims: Readonly<Record<string, number>> = {},
): Uint8Array {
  const locals: Buffer[] = [];
  const directory: Buffer[] = [];
  let offset = 0;
  for (const [name, content] of Object.entries(parts)) {
    const data = Buffer.from(content);
    const packed = deflateRawSync(data);
    const bytes = Buffer.from(name);
    const common = Buffer.alloc(26);
    common.writeUInt16LE(20, 0);
    common.writeUInt16LE(8, 4);
    common.writeUInt32LE(crc32(data), 10);
    common.writeUInt32LE(packed.length, 14);
    common.writeUInt32LE(claims[name] ?? data.length, 18);
    common.writeUInt16LE(bytes.length, 22);
    const local = Buffer.concat([Buffer.from('PK\u0003\u0004'), common, bytes, packed]);
    const entry = Buffer.alloc(14);
    entry.writeUInt32LE(offset, 10);
    directory.push(Buffer.concat([Buffer.from('PK\u0001\u0002\u0014\u0000'), common, entry, bytes]));
    locals.push(local);
    offset += local.length;
  }
  const central = Buffer.concat(directory);
  const end = Buffer.alloc(22);
  end.write('PK\u0005\u0006', 0, 'latin1');
  end.writeUInt16LE(locals.length, 8);
  end.writeUInt16LE(locals.length, 10);
  end.writeUInt32LE(central.length, 12);
  end.writeUInt32LE(offset, 16);
  return Uint8Array.from(Buffer.concat([...locals, central, end]));
}

const XML = '<?xml version="1.0" encoding="UTF-8" standalone="yes"?>';

/** A cell: text, a number, or raw XML of a cell's inside with its type ('<f>1+1</f><v>2</v>'). */
export type SheetCell =
  | string
  | number
  | { readonly raw: string; readonly type?: string; readonly style?: number };

/** The parts of an .xlsx file with one sheet. */
export function sheetParts(rows: readonly (readonly SheetCell[])[]): Record<string, string> {
  const cell = (value: SheetCell, at: string): string => {
    if (typeof value === 'number') return `<c r="${at}"><v>${value}</v></c>`;
    if (typeof value === 'string') return `<c r="${at}" t="inlineStr"><is><t>${escaped(value)}</t></is></c>`;
    const type = value.type === undefined ? '' : ` t="${value.type}"`;
    const style = value.style === undefined ? '' : ` s="${value.style}"`;
    return `<c r="${at}"${type}${style}>${value.raw}</c>`;
  };
  const data = rows
    .map(
      (cells, r) =>
        `<row r="${r + 1}">${cells.map((c, i) => cell(c, `${String.fromCharCode(65 + i)}${r + 1}`)).join('')}</row>`,
    )
    .join('');
  const main = 'http://schemas.openxmlformats.org/spreadsheetml/2006/main';
  const relations = 'http://schemas.openxmlformats.org/package/2006/relationships';
  const office = 'http://schemas.openxmlformats.org/officeDocument/2006/relationships';
  return {
    '[Content_Types].xml': `${XML}<Types xmlns="http://schemas.openxmlformats.org/package/2006/content-types"><Default Extension="rels" ContentType="application/vnd.openxmlformats-package.relationships+xml"/><Default Extension="xml" ContentType="application/xml"/><Override PartName="/xl/workbook.xml" ContentType="application/vnd.openxmlformats-officedocument.spreadsheetml.sheet.main+xml"/><Override PartName="/xl/worksheets/sheet1.xml" ContentType="application/vnd.openxmlformats-officedocument.spreadsheetml.worksheet+xml"/><Override PartName="/xl/styles.xml" ContentType="application/vnd.openxmlformats-officedocument.spreadsheetml.styles+xml"/></Types>`,
    '_rels/.rels': `${XML}<Relationships xmlns="${relations}"><Relationship Id="rId1" Type="${office}/officeDocument" Target="xl/workbook.xml"/></Relationships>`,
    'xl/_rels/workbook.xml.rels': `${XML}<Relationships xmlns="${relations}"><Relationship Id="rId1" Type="${office}/worksheet" Target="worksheets/sheet1.xml"/><Relationship Id="rId2" Type="${office}/styles" Target="styles.xml"/></Relationships>`,
    'xl/workbook.xml': `${XML}<workbook xmlns="${main}" xmlns:r="${office}"><sheets><sheet name="Tools" sheetId="1" r:id="rId1"/></sheets></workbook>`,
    'xl/styles.xml': `${XML}<styleSheet xmlns="${main}"><fonts count="1"><font/></fonts><fills count="1"><fill/></fills><borders count="1"><border/></borders><cellStyleXfs count="1"><xf/></cellStyleXfs><cellXfs count="2"><xf numFmtId="0"/><xf numFmtId="14" applyNumberFormat="1"/></cellXfs></styleSheet>`,
    'xl/worksheets/sheet1.xml': `${XML}<worksheet xmlns="${main}"><sheetData>${data}</sheetData></worksheet>`,
  };
}

function escaped(text: string): string {
  return text.replace(/&/g, '&amp;').replace(/</g, '&lt;').replace(/>/g, '&gt;');
}
