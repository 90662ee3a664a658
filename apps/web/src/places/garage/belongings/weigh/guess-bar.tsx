import { useTranslation } from 'react-i18next';
import { useFormat } from '../../../../format/use-format.ts';

/** Solid: weighed. Dashed outline: still a guess. One true scale across the sheet. */
export function GuessBar({ weighed, estimated }: { weighed: number; estimated: number }) {
  const { t } = useTranslation();
  const format = useFormat();
  const all = weighed + estimated;
  const share = all === 0 ? 0 : (weighed / all) * 100;
  return (
    <div className="guess">
      <svg
        width="100%"
        height="20"
        role="img"
        aria-label={t('belongings.guessBar', {
          weighed: format.mass(weighed),
          estimated: format.mass(estimated),
        })}
      >
        <rect x="1" y="2" width="calc(100% - 2px)" height="16" className="guess-open" />
        <rect x="0" y="1" width={`${share}%`} height="18" className="guess-solid" />
      </svg>
      <div className="guess-words small" aria-hidden="true">
        <span>{t('belongings.guessWeighed', { mass: format.mass(weighed) })}</span>
        <span className="assumed">{t('belongings.guessLeft', { mass: format.mass(estimated) })}</span>
      </div>
    </div>
  );
}
