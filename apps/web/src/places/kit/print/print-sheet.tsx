import type { PlanAnswer } from '@waymend/planner/answer/plan-answer';
import type { SizeRow } from '@waymend/planner/views/size-table';
import type { ReactNode } from 'react';
import { useEffect, useState } from 'react';
import { useTranslation } from 'react-i18next';
import { useFormat } from '../../../format/use-format.ts';
import { Button } from '../../../look/button.tsx';
import { Check } from '../../../look/check.tsx';
import { useQuestion } from '../../../shell/aim.ts';
import { usePlan, useRecord, useStores } from '../../../shell/stores.tsx';
import { useTrip } from '../../../shell/use-trip.ts';
import { useWidth } from '../curve/use-width.ts';
import { tripsSentence } from '../sheet/worth-words.ts';
import { KitList, kitPages } from './kit-list.tsx';
import { LoadSheet } from './load-sheet.tsx';
import { pagesByHeight } from './pages.ts';
import { Paper } from './paper.tsx';
import { SIZES_ROOM_MM, SizeList, heightOf } from './size-list.tsx';

/** Width of a sheet on the screen when nothing makes it smaller: 210 mm at 96 px to the inch. */
const PAPER_PX = (210 / 25.4) * 96;

interface Page {
  readonly key: string;
  readonly title: string;
  readonly words: string;
  readonly number: string;
  readonly body: ReactNode;
}

/** The kit list, the load sheet and the sizes for the glove box, on A4 in true millimetres, black on white. */
export function PrintSheet({ answer }: { answer: PlanAnswer }) {
  const { t } = useTranslation();
  const format = useFormat();
  const { garage } = useRecord();
  const { today } = useStores();
  const sizes = useSizes();
  const { ref, width } = useWidth();
  const [chosen, setChosen] = useState({ kit: true, load: true, sizes: true });
  const sheets = width > 1000 ? 2 : 1;
  const help = tripsSentence(1 - answer.unaided.kit, format, t);
  const pages: readonly Page[] = [
    ...(chosen.kit
      ? kitPages(answer, garage, t('print.elsewhere')).map((rows, i) => ({
          key: `kit${i}`,
          title: t('print.kitTitle'),
          words: t('print.kitWords', {
            pieces: answer.kit.items.reduce((n, item) => n + item.copies, 0),
            mass: format.mass(answer.kit.massGrams),
          }),
          number: `K-${String(i + 1).padStart(2, '0')}`,
          body: <KitList rows={rows} />,
        }))
      : []),
    ...(chosen.load
      ? [
          {
            key: 'load',
            title: t('print.loadTitle'),
            words: t('print.loadWords'),
            number: 'L-01',
            body: <LoadSheet answer={answer} garage={garage} />,
          },
        ]
      : []),
    ...(chosen.sizes && sizes !== null
      ? pagesByHeight(sizes, heightOf, SIZES_ROOM_MM).map((rows, i) => ({
          key: `sizes${i}`,
          title: t('print.sizesTitle'),
          words: t('print.sizesWords'),
          number: `S-${String(i + 1).padStart(2, '0')}`,
          body: <SizeList rows={rows} />,
        }))
      : []),
  ];
  const fields = {
    vehicle: answer.trip.vehicle,
    trip: answer.trip.name,
    answer: help,
    date: new Intl.DateTimeFormat('en-GB', { day: 'numeric', month: 'long', year: 'numeric' }).format(
      today(),
    ),
  };
  return (
    <div>
      <div className="print-controls">
        <h1>{t('print.title')}</h1>
        <p className="quiet prose">{t('print.words')}</p>
        <div className="acts">
          <Check isOn={chosen.kit} onChange={(kit) => setChosen({ ...chosen, kit })}>
            {t('print.kitTitle')}
          </Check>
          <Check isOn={chosen.load} onChange={(load) => setChosen({ ...chosen, load })}>
            {t('print.loadTitle')}
          </Check>
          <Check isOn={chosen.sizes} onChange={(on) => setChosen({ ...chosen, sizes: on })}>
            {t('print.sizesTitle')}
          </Check>
        </div>
        <div className="acts">
          <Button main isDisabled={pages.length === 0} onPress={() => print()}>
            {t('print.print', { count: pages.length })}
          </Button>
        </div>
        {chosen.sizes && sizes === null && <p role="status">{t('print.sizesComing')}</p>}
      </div>
      <div ref={ref}>
        {width > 0 && (
          <div className="papers" style={{ zoom: Math.min(1, width / sheets / (PAPER_PX + 16)) }}>
            {pages.map((page, i) => (
              <Paper
                key={page.key}
                title={page.title}
                words={page.words}
                number={page.number}
                sheet={i + 1}
                of={pages.length}
                fields={fields}
              >
                {page.body}
              </Paper>
            ))}
          </div>
        )}
      </div>
    </div>
  );
}

/** The sizes of the plan that is shown; null until the worker has them. */
function useSizes(): readonly SizeRow[] | null {
  const { client } = useStores();
  const { garage } = useRecord();
  const { tripId } = useTrip();
  const question = useQuestion();
  const { fresh, proving } = usePlan();
  const [rows, setRows] = useState<readonly SizeRow[] | null>(null);
  useEffect(() => {
    if (!fresh || proving || tripId === null) return undefined;
    let wanted = true;
    void client.once({ kind: 'kit/sizes', garage, trip: tripId, question }).then((reply) => {
      if (wanted && reply.kind === 'kit/sizes') setRows(reply.rows);
    });
    return () => {
      wanted = false;
    };
  }, [client, garage, tripId, question, fresh, proving]);
  return rows;
}
