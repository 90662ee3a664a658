import type { FailureWhy } from '@waymend/planner/answer/why-answer';
import { Button as Plain } from 'react-aria-components';
import { useTranslation } from 'react-i18next';
import { useFormat } from '../../../format/use-format.ts';
import { Block } from '../../../look/parts.tsx';
import { cureWords } from '../sheet/lists.tsx';
import { tiny } from '../sheet/worth-words.ts';
import { GradeMark, markOf } from '../../../look/grade-mark.tsx';

/** How often a failure is to be expected, what each factor does and where it comes from, and what answers it. */
export function FailureWhySheet({ why, open }: { why: FailureWhy; open: (id: string) => void }) {
  const { t } = useTranslation();
  const format = useFormat();
  return (
    <>
      <p>
        {t('why.expected', {
          all: tiny(why.expected, format, t),
          stopping: tiny(why.stopping, format, t),
        })}
      </p>
      <Block title={t('why.answers')} level={3}>
        {why.answers.length === 0 ? (
          <p>{t('why.noAnswer')}</p>
        ) : (
          <ul className="why-rows">
            {why.answers.map(({ job, title, grade, chance }) => (
              <li key={job} className="why-need">
                <GradeMark mark={markOf(grade)} />
                <span>
                  <Plain className="why-open" onPress={() => open(job)}>
                    {title}
                  </Plain>
                  <span className="small quiet">
                    {t('why.restores', {
                      chance: format.percent(chance),
                      grade: t(`why.grade.${markOf(grade)}`),
                    })}
                  </span>
                </span>
              </li>
            ))}
          </ul>
        )}
      </Block>
      {why.cures.length > 0 && (
        <Block title={t('gaps.cures')} level={3}>
          <ul className="why-rows">
            {why.cures.map((cure) => (
              <li key={cure.words} className="why-row">
                {cureWords(cure, format)}
              </li>
            ))}
          </ul>
        </Block>
      )}
      <Block title={t('why.rate')} aside={t('why.rateAside')} level={3}>
        {why.parts.map((part) => (
          <table key={`${part.on}${part.title}`} className="why-table">
            <caption className="why-caption">
              {t('why.part', { on: part.on, title: part.title, events: tiny(part.events, format, t) })}
            </caption>
            <thead>
              <tr>
                <th scope="col">{t('why.factor')}</th>
                <th scope="col">{t('why.times')}</th>
                <th scope="col">{t('why.source')}</th>
              </tr>
            </thead>
            <tbody>
              <tr>
                <td>{t('why.base')}</td>
                <td className="number">{figures(part.base * part.share)}</td>
                <td className="small">{part.basis}</td>
              </tr>
              {part.factors.map(({ title, factor, basis, mark }) => (
                <tr key={title}>
                  <td>{title}</td>
                  <td className="number">{figures(factor)}</td>
                  <td className="small">{basedOn(mark, basis)}</td>
                </tr>
              ))}
            </tbody>
          </table>
        ))}
      </Block>
    </>
  );
}

/** The mark of how sure a figure is, unless its basis says it already. */
function basedOn(mark: string, basis: string): string {
  const word = mark.replaceAll('-', ' ');
  return word === '' || basis.toLowerCase().startsWith(word) ? basis : `${word}: ${basis}`;
}

/** Two figures: no rate is known better. */
function figures(value: number): string {
  return value === 0 ? '0' : String(Number(value.toPrecision(2)));
}
