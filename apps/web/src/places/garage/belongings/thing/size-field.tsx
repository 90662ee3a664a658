import { useState } from 'react';
import { useTranslation } from 'react-i18next';
import { Button } from '../../../../look/button.tsx';
import { SettledTextField } from '../../../../look/settled-field.tsx';
import { useStores } from '../../../../shell/stores.tsx';
import type { Row } from '../rows.ts';
import { useEditThing } from '../use-edit-thing.ts';

/** A size of its own where it differs from the usual one; what is no size is refused, what is in no standard is asked about. */
export function SizeField({ row, usual }: { row: Row; usual: string | null }) {
  const { t } = useTranslation();
  const { reader } = useStores();
  const { change } = useEditThing(row.id, row.name);
  const [said, setSaid] = useState<string | null>(null);
  const [odd, setOdd] = useState<string | null>(null);
  const settle = async (text: string): Promise<void> => {
    setSaid(null);
    setOdd(null);
    if (text === '') {
      change(t('belongings.size'), {}, ['size']);
      return;
    }
    const reply = await reader.once({ kind: 'belongings/size', text });
    if (reply.kind === 'refused') setSaid(reply.refusals[0]?.message ?? '');
    else if (reply.kind !== 'belongings/size') return;
    else if (!reply.odd) change(t('belongings.size'), { size: reply.label });
    else {
      setOdd(reply.label);
      setSaid(
        reply.nearest === null
          ? t('belongings.oddSize', { size: reply.label })
          : t('belongings.oddSizeNear', { size: reply.label, near: reply.nearest }),
      );
    }
  };
  return (
    <div className="field">
      <SettledTextField
        label={t('belongings.size')}
        value={row.belonging.size ?? ''}
        onSettle={(text) => void settle(text)}
        hint={usual === null ? t('belongings.sizeHint') : t('belongings.usually', { value: usual })}
      />
      {said !== null && (
        <div className="thing-asks" role="alert">
          <p>{said}</p>
          {odd !== null && (
            <Button
              onPress={() => {
                change(t('belongings.size'), { size: odd, confirmed: true });
                setSaid(null);
                setOdd(null);
              }}
            >
              {t('belongings.oddSizeYes')}
            </Button>
          )}
        </div>
      )}
    </div>
  );
}
