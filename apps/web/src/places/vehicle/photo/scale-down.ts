/** Longest side in pixels, and bytes, of a photo that is kept. */
export const LONGEST_SIDE = 1600;
export const MOST_BYTES = 200_000;

/** A picture that can be drawn at a size and written as a JPEG. */
export interface Picture {
  readonly width: number;
  readonly height: number;
  /** `quality` 0..1; null when the browser cannot write it. */
  readonly jpeg: (width: number, height: number, quality: number) => Promise<Blob | null>;
}

const QUALITIES = [0.82, 0.7, 0.58, 0.46] as const;
const SHRINK = 0.75;
const SMALLEST_SIDE = 200;

/**
 * The photo as large as it may be: at most LONGEST_SIDE, first written coarser, then drawn smaller, until it is within MOST_BYTES.
 * Null when the browser cannot write it.
 */
export async function scaledDown(picture: Picture): Promise<Blob | null> {
  const longest = Math.max(picture.width, picture.height);
  if (!(longest > 0)) return null;
  let side = Math.min(LONGEST_SIDE, longest);
  for (;;) {
    const scale = side / longest;
    const [width, height] = [picture.width, picture.height].map((of) => Math.max(1, Math.round(of * scale)));
    for (const quality of QUALITIES) {
      const written = await picture.jpeg(width ?? 1, height ?? 1, quality);
      if (written === null) return null;
      const isSmallest = side <= SMALLEST_SIDE && quality === QUALITIES.at(-1);
      if (written.size <= MOST_BYTES || isSmallest) return written;
    }
    side = Math.max(SMALLEST_SIDE, Math.floor(side * SHRINK));
  }
}

/** A photo off the camera, turned the right way up. Null when the browser cannot read it. */
export async function pictureOf(file: Blob): Promise<Picture | null> {
  let bitmap: ImageBitmap;
  try {
    bitmap = await createImageBitmap(file);
  } catch {
    return null;
  }
  return {
    width: bitmap.width,
    height: bitmap.height,
    jpeg: (width, height, quality) => {
      const canvas = document.createElement('canvas');
      canvas.width = width;
      canvas.height = height;
      canvas.getContext('2d')?.drawImage(bitmap, 0, 0, width, height);
      // Written anew: place and time of the camera's own notes stay behind.
      return new Promise((resolve) => canvas.toBlob(resolve, 'image/jpeg', quality));
    },
  };
}
