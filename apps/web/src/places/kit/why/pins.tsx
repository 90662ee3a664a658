import { ToggleButton, ToggleButtonGroup } from 'react-aria-components';
import { useTranslation } from 'react-i18next';
import { useRecord } from '../../../shell/stores.tsx';
import { withPin } from '../edits.ts';

const MARKS = ['always', 'none', 'never'] as const;

/** The owner's own mark, in red pencil: it stands above whatever the plan thinks. */
export function Pins({ id, name }: { id: string; name: string }) {
  const { t } = useTranslation();
  const { garage, edit } = useRecord();
  const belonging = garage.belongings[id];
  if (belonging === undefined) return null;
  const now = belonging.pin ?? 'none';
  return (
    <div className="block">
      <ToggleButtonGroup
        className="acts"
        aria-label={t('why.mark')}
        selectionMode="single"
        disallowEmptySelection
        selectedKeys={[now]}
        onSelectionChange={(keys) => {
          const mark = MARKS.find((m) => keys.has(m));
          if (mark === undefined || mark === now) return;
          void edit(t(`why.marked.${mark}`, { name }), (before) =>
            withPin(before, [id], mark === 'none' ? null : mark),
          );
        }}
      >
        {MARKS.map((mark) => (
          <ToggleButton key={mark} id={mark} className={mark === now ? 'act decides chosen' : 'act'}>
            {t(`why.pins.${mark}`)}
          </ToggleButton>
        ))}
      </ToggleButtonGroup>
      <p className="small quiet">{t(`why.pinWords.${now}`)}</p>
    </div>
  );
}
