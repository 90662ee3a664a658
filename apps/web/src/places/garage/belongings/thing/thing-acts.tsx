import { useTranslation } from 'react-i18next';
import { Button } from '../../../../look/button.tsx';
import type { Row } from '../rows.ts';
import { useEditThing } from '../use-edit-thing.ts';

/** Taking it out of its set, and removing it; both can be undone and so are not asked about. */
export function ThingActs({ row, onGone }: { row: Row; onGone: () => void }) {
  const { t } = useTranslation();
  const { remove, takeOut } = useEditThing(row.id, row.name);
  return (
    <div className="acts">
      {row.inside !== null && <Button onPress={takeOut}>{t('belongings.takeOut')}</Button>}
      <Button
        onPress={() => {
          onGone();
          remove();
        }}
      >
        {row.contents === null ? t('belongings.remove') : t('belongings.removeSet', { count: row.contents })}
      </Button>
    </div>
  );
}
