import { useTranslation } from 'react-i18next';
import { Block, Caution, Sentence } from '../../../look/parts.tsx';

/** What to know before trusting the plan; a limit that is passed is a danger and stands first, framed. */
export function Warnings({ warnings }: { warnings: readonly string[] }) {
  const { t } = useTranslation();
  const dangers = warnings.filter(isDanger);
  const others = warnings.filter((w) => !isDanger(w));
  return (
    <>
      {dangers.map((words) => (
        <Caution key={words}>
          <p>{words}</p>
        </Caution>
      ))}
      {others.length > 0 && (
        <Block title={t('kit.warnings')} aside={t('kit.warningsCount', { count: others.length })}>
          <ul className="kit-warnings">
            {others.map((words) => (
              <li key={words}>
                <Sentence>{words}</Sentence>
              </li>
            ))}
          </ul>
        </Block>
      )}
    </>
  );
}

/** Passed limits, and what no trip should leave without. */
function isDanger(words: string): boolean {
  return (
    words.startsWith('Load: ') ||
    words.startsWith('Nothing owned or affordable') ||
    words.startsWith('Not everything the floor')
  );
}
