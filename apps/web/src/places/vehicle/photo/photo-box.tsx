import { useTranslation } from 'react-i18next';
import { Button } from '../../../look/button.tsx';
import { PhotoButton } from './photo-button.tsx';
import type { PhotoOf } from './use-photo.ts';
import './photo.css';

/** The photo of one place with what may be done to it; without one, what it would be good for. */
export function PhotoBox({ photo, title }: { photo: PhotoOf; title: string }) {
  const { t } = useTranslation();
  const { url, said, remove } = photo;
  return (
    <div className="photo" role="group" aria-label={t('walk.photo.of', { title })}>
      {url !== null && (
        <span className="photo-frame">
          <img className="photo-picture" src={url} alt={t('walk.photo.of', { title })} />
        </span>
      )}
      <div className="photo-words">
        {url !== null && (
          <div className="acts">
            <PhotoButton photo={photo} />
            <Button onPress={() => void remove()}>{t('walk.photo.remove')}</Button>
          </div>
        )}
        <p className="small quiet" role="status">
          {said ?? t('walk.photo.what')}
        </p>
      </div>
    </div>
  );
}
