import type { PlanAnswer } from '@waymend/planner/answer/plan-answer';
import { useMemo, useState } from 'react';
import { Tab, TabList, TabPanel, Tabs } from 'react-aria-components';
import { useTranslation } from 'react-i18next';
import { Link, useLocation } from 'wouter';
import { useFormat } from '../../../format/use-format.ts';
import { Block } from '../../../look/parts.tsx';
import { usePlan, useRecord } from '../../../shell/stores.tsx';
import { CurveFigure } from '../curve/curve.tsx';
import { PointsTable } from '../curve/points-table.tsx';
import { useCurve } from '../curve/use-curve.ts';
import { WhyDialog } from '../why/why-dialog.tsx';
import { Headline } from './headline.tsx';
import type { KitList } from './lists.tsx';
import { listsOf } from './lists.tsx';
import { LoadsLeft } from './loads-left.tsx';
import { RowList } from './row-list.tsx';
import { useWide } from './use-wide.ts';
import { Warnings } from './warnings.tsx';
import './kit-sheet.css';

/** Rows that the curve points to. */
const BALLOONS = 8;
const FIRST = { along: 12, home: 8, gaps: 5, buy: 8 } as const;

/** The answer: the curve with its handle, and what comes along, stays home, is missing and is bought. */
export function KitSheet({ answer }: { answer: PlanAnswer }) {
  const { t } = useTranslation();
  const format = useFormat();
  const { garage } = useRecord();
  const { curveDone } = usePlan();
  const wide = useWide();
  const curve = useCurve(answer);
  const [why, setWhy] = useState<string | null>(null);
  const [, go] = useLocation();
  // Not made anew while the handle moves: a garage may hold thousands of belongings.
  const lists = useMemo(
    () =>
      listsOf({
        answer,
        garage,
        format,
        t,
        balloons: BALLOONS,
        open: setWhy,
        openGap: (failure) => go(`/kit/gaps/${encodeURIComponent(failure)}`),
      }),
    [answer, garage, format, t, go],
  );
  const figure = (
    <CurveFigure
      answer={answer}
      curve={curve}
      plot={wide ? 310 : 132}
      listed={answer.kit.items.slice(0, BALLOONS).map(({ id }) => id)}
    />
  );
  const notes = (
    <>
      <PointsTable steps={curve.steps} done={curveDone} />
      <Warnings warnings={answer.warnings} />
      <p className="small quiet prose">{t('kit.estimates')}</p>
    </>
  );
  return (
    <>
      {wide ? (
        <div className="kit-desk">
          <div className="kit-left">
            <Headline answer={answer} curve={curve} />
            {figure}
            <div className="kit-pair">
              {lists
                .filter(({ id }) => id === 'gaps')
                .map((list) => (
                  <ListBlock key={list.id} list={list} />
                ))}
              <LoadsLeft load={answer.load} />
            </div>
            {notes}
          </div>
          <div className="kit-right">
            {lists
              .filter(({ id }) => id !== 'gaps')
              .map((list) => (
                <ListBlock key={list.id} list={list} />
              ))}
          </div>
        </div>
      ) : (
        <div className="kit-phone">
          <Headline answer={answer} curve={curve} />
          <Tabs className="kit-tabs">
            <TabList aria-label={t('kit.lists')} className="kit-tab-list">
              {lists.map(({ id, title, short }) => (
                <Tab key={id} id={id} className="kit-tab">
                  <span>{title}</span>
                  <span className="small quiet">{short}</span>
                </Tab>
              ))}
            </TabList>
            {lists.map((list) => (
              <TabPanel key={list.id} id={list.id} className="kit-tab-panel">
                <p className="quiet small">{list.aside}</p>
                <ListRows list={list} first={30} />
              </TabPanel>
            ))}
          </Tabs>
          <LoadsLeft load={answer.load} />
          {notes}
          <div className="kit-dock">{figure}</div>
        </div>
      )}
      <WhyDialog answer={answer} what={why} onClose={() => setWhy(null)} />
    </>
  );
}

function ListBlock({ list }: { list: KitList }) {
  return (
    <Block title={list.title} aside={list.aside}>
      <ListRows list={list} first={FIRST[list.id]} />
    </Block>
  );
}

function ListRows({ list, first }: { list: KitList; first: number }) {
  const { t } = useTranslation();
  return (
    <>
      {list.rows.length === 0 ? (
        <p>{list.empty}</p>
      ) : (
        <RowList label={list.title} rows={list.rows} first={first} rest={list.rest} />
      )}
      {(list.id === 'gaps' || list.id === 'buy') && (
        <p>
          <Link href="/kit/gaps" className="word-link">
            {t('kit.toGaps')}
          </Link>
        </p>
      )}
    </>
  );
}
