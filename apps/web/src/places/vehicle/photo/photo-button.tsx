import { FileTrigger } from 'react-aria-components';
import { useTranslation } from 'react-i18next';
import { Button } from '../../../look/button.tsx';
import type { PhotoOf } from './use-photo.ts';

/** Takes a photo with the camera on the far side of a phone, or chooses one; nobody has to. */
export function PhotoButton({ photo: { url, take } }: { photo: PhotoOf }) {
  const { t } = useTranslation();
  return (
    <FileTrigger
      acceptedFileTypes={['image/*']}
      defaultCamera="environment"
      onSelect={(files) => {
        const file = files?.[0];
        if (file !== undefined) void take(file);
      }}
    >
      <Button onPress={() => undefined}>{t(url === null ? 'walk.photo.take' : 'walk.photo.again')}</Button>
    </FileTrigger>
  );
}
