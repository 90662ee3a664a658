// A PNG with few colours instead of millions: a drawing in ink on paper needs no more, and takes a third of the room.
// Format: PNG, third edition (W3C Recommendation): chunks, filters of section 9, indexed colour of section 11.2.
import { crc32, deflateSync, inflateSync } from 'node:zlib';

const SIGNATURE = Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]);

/** The same picture with at most 256 colours; takes what a browser writes (8 bits, RGB or RGBA, not interlaced). */
export function withFewColours(png) {
  const { width, height, pixels } = decode(png);
  const palette = paletteOf(pixels);
  return encode(width, height, palette, indexed(pixels, palette));
}

function decode(png) {
  if (!png.subarray(0, 8).equals(SIGNATURE)) throw new Error('not a PNG');
  const data = [];
  let header = null;
  for (let at = 8; at < png.length; ) {
    const length = png.readUInt32BE(at);
    const type = png.toString('latin1', at + 4, at + 8);
    const body = png.subarray(at + 8, at + 8 + length);
    if (type === 'IHDR') header = body;
    if (type === 'IDAT') data.push(body);
    at += 12 + length;
  }
  if (header === null) throw new Error('a PNG without a header');
  const [width, height] = [header.readUInt32BE(0), header.readUInt32BE(4)];
  const bytes = header[9] === 6 ? 4 : header[9] === 2 ? 3 : 0;
  if (header[8] !== 8 || bytes === 0 || header[12] !== 0)
    throw new Error('a kind of PNG that no browser writes');
  return { width, height, pixels: unfiltered(inflateSync(Buffer.concat(data)), width, height, bytes) };
}

/** RGB of each pixel as one number. */
function unfiltered(raw, width, height, bytes) {
  const stride = width * bytes;
  const pixels = new Uint32Array(width * height);
  let above = new Uint8Array(stride);
  for (let y = 0; y < height; y += 1) {
    const start = y * (stride + 1);
    const filter = raw[start];
    const line = new Uint8Array(raw.subarray(start + 1, start + 1 + stride));
    for (let x = 0; x < stride; x += 1) {
      const left = x >= bytes ? line[x - bytes] : 0;
      const corner = x >= bytes ? above[x - bytes] : 0;
      line[x] += predicted(filter, left, above[x], corner);
    }
    for (let x = 0; x < width; x += 1)
      pixels[y * width + x] = (line[x * bytes] << 16) | (line[x * bytes + 1] << 8) | line[x * bytes + 2];
    above = line;
  }
  return pixels;
}

function predicted(filter, left, above, corner) {
  if (filter === 1) return left;
  if (filter === 2) return above;
  if (filter === 3) return (left + above) >> 1;
  if (filter !== 4) return 0;
  const guess = left + above - corner;
  const [a, b, c] = [Math.abs(guess - left), Math.abs(guess - above), Math.abs(guess - corner)];
  return a <= b && a <= c ? left : b <= c ? above : corner;
}

/** The colours there are, or the commonest 64: the rest are shades at the edge of a letter. */
function paletteOf(pixels) {
  const counts = new Map();
  for (const pixel of pixels) counts.set(pixel, (counts.get(pixel) ?? 0) + 1);
  const byCount = [...counts].sort((a, b) => b[1] - a[1]).map(([pixel]) => pixel);
  if (byCount.length <= 64) return byCount;
  // One of each cell of a coarse grid, so that rare shades far from all others are not lost.
  const chosen = new Map();
  for (const pixel of byCount) {
    const cell = (pixel >> 5) & 0x070707;
    if (!chosen.has(cell) && chosen.size < 64) chosen.set(cell, pixel);
  }
  const kept = new Set(chosen.values());
  for (const pixel of byCount) {
    if (kept.size >= 64) break;
    kept.add(pixel);
  }
  return [...kept];
}

function indexed(pixels, palette) {
  const known = new Map(palette.map((pixel, index) => [pixel, index]));
  return Uint8Array.from(pixels, (pixel) => {
    const found = known.get(pixel);
    if (found !== undefined) return found;
    const nearest = nearestOf(pixel, palette);
    known.set(pixel, nearest);
    return nearest;
  });
}

function nearestOf(pixel, palette) {
  let best = 0;
  let least = Number.POSITIVE_INFINITY;
  palette.forEach((colour, index) => {
    const away =
      ((pixel >> 16) - (colour >> 16)) ** 2 +
      (((pixel >> 8) & 255) - ((colour >> 8) & 255)) ** 2 +
      ((pixel & 255) - (colour & 255)) ** 2;
    if (away < least) [best, least] = [index, away];
  });
  return best;
}

function encode(width, height, palette, indices) {
  const header = Buffer.alloc(13);
  header.writeUInt32BE(width, 0);
  header.writeUInt32BE(height, 4);
  header.set([8, 3, 0, 0, 0], 8);
  const colours = Buffer.from(palette.flatMap((c) => [c >> 16, (c >> 8) & 255, c & 255]));
  const lines = Buffer.alloc(height * (width + 1));
  for (let y = 0; y < height; y += 1)
    lines.set(indices.subarray(y * width, (y + 1) * width), y * (width + 1) + 1);
  return Buffer.concat([
    SIGNATURE,
    chunk('IHDR', header),
    chunk('PLTE', colours),
    chunk('IDAT', deflateSync(lines, { level: 9, memLevel: 9 })),
    chunk('IEND', Buffer.alloc(0)),
  ]);
}

function chunk(type, body) {
  const typed = Buffer.concat([Buffer.from(type, 'latin1'), body]);
  const out = Buffer.alloc(typed.length + 8);
  out.writeUInt32BE(body.length, 0);
  typed.copy(out, 4);
  out.writeUInt32BE(crc32(typed), typed.length + 4);
  return out;
}
