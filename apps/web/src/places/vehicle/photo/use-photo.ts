import { useEffect, useState } from 'react';
import { useTranslation } from 'react-i18next';
import { useStores } from '../../../shell/stores.tsx';
import { pictureOf, scaledDown } from './scale-down.ts';

export interface PhotoOf {
  /** Address of the photo; null when there is none. */
  readonly url: string | null;
  /** What is being done, or why it was not. */
  readonly said: string | null;
  readonly take: (file: File) => Promise<void>;
  readonly remove: () => Promise<void>;
}

/** The photo of one place of a vehicle, see photoKey. */
export function usePhoto(place: string): PhotoOf {
  const { t } = useTranslation();
  const { photos } = useStores();
  const [photo, setPhoto] = useState<Blob | null>(null);
  const [url, setUrl] = useState<string | null>(null);
  const [said, setSaid] = useState<string | null>(null);
  useEffect(() => {
    let wanted = true;
    void photos.get(place).then((found) => wanted && setPhoto(found.ok ? found.value : null));
    return () => {
      wanted = false;
    };
  }, [photos, place]);
  useEffect(() => {
    const address = photo === null ? null : URL.createObjectURL(photo);
    // The address is a thing of the browser that has to be given back.
    // eslint-disable-next-line react-hooks/set-state-in-effect
    setUrl(address);
    return () => {
      if (address !== null) URL.revokeObjectURL(address);
    };
  }, [photo]);
  return {
    url,
    said,
    take: async (file) => {
      setSaid(t('walk.photo.working'));
      const picture = await pictureOf(file);
      const small = picture === null ? null : await scaledDown(picture);
      if (small === null) {
        setSaid(t('walk.photo.failed'));
        return;
      }
      const kept = await photos.put(place, small);
      setSaid(kept.ok ? null : t('walk.photo.notKept'));
      if (kept.ok) setPhoto(small);
    },
    remove: async () => {
      await photos.remove(place);
      setPhoto(null);
    },
  };
}
