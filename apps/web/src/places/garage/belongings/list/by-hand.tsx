import type { Belonging } from '@waymend/garage/record/schema';
import { useState } from 'react';
import { useTranslation } from 'react-i18next';
import { Button } from '../../../../look/button.tsx';
import { Dialog } from '../../../../look/dialog.tsx';
import { TextField } from '../../../../look/field.tsx';
import { freshId } from '../../../../shell/fresh-id.ts';
import { useRecord } from '../../../../shell/stores.tsx';
import { BARE } from '../add-all.ts';
import { ThingPicker } from '../thing-picker.tsx';
import { useCatalogue } from '../use-catalogue.ts';

/** One thing by hand: looked up in the catalogue, or named as the owner's own. It is then laid open to be filled in. */
export function ByHand({ isOpen, onClose }: { isOpen: boolean; onClose: (added: string | null) => void }) {
  const { t } = useTranslation();
  const { edit } = useRecord();
  const catalogue = useCatalogue();
  const [own, setOwn] = useState('');
  const add = (wish: string, name: string, fields: Partial<Belonging>): void => {
    const id = freshId(wish);
    const thing: Belonging = { ...BARE, ...fields };
    void edit(t('belongings.step', { what: t('belongings.stepAdded'), name }), (before) => ({
      ...before,
      belongings: { ...before.belongings, [id]: thing },
    }));
    onClose(id);
  };
  return (
    <Dialog title={t('belongings.byHandTitle')} isOpen={isOpen} onClose={() => onClose(null)}>
      <ThingPicker
        label={t('belongings.entrySearch')}
        start=""
        onChoose={(is) => add(is, catalogue?.byId.get(is)?.name ?? is, { is })}
      />
      <div className="by-hand-own">
        <TextField
          label={t('belongings.ownName')}
          hint={t('belongings.ownHint')}
          value={own}
          onChange={(next) => setOwn(next.slice(0, 200))}
        />
        <Button isDisabled={own.trim() === ''} onPress={() => add(own, own.trim(), { name: own.trim() })}>
          {t('belongings.ownAdd')}
        </Button>
      </div>
    </Dialog>
  );
}
