import { useTranslation } from 'react-i18next';
import { Sentence } from '../../../../look/parts.tsx';

/** Bare rows in narrow line, and the first act in words. */
export function EmptyList() {
  const { t } = useTranslation();
  return (
    <div className="empty-list">
      <Sentence strong>{t('belongings.emptyFirst')}</Sentence>
      <Sentence>{t('belongings.emptyHow')}</Sentence>
      <svg aria-hidden="true" width="100%" height="180">
        {[30, 78, 126, 174].map((y) => (
          <g key={y} className="empty-row">
            <rect x="1.5" y={y - 22} width="15" height="15" />
            <line x1="0" x2="100%" y1={y} y2={y} />
          </g>
        ))}
      </svg>
    </div>
  );
}
