import type { Garage } from '@waymend/garage/record/schema';
import { useState } from 'react';
import { useTranslation } from 'react-i18next';
import { Button } from '../../../../look/button.tsx';
import { TextField } from '../../../../look/field.tsx';
import { Block } from '../../../../look/parts.tsx';
import { useRecord, useStores } from '../../../../shell/stores.tsx';
import { draftStore } from './draft.ts';

/** A word taught once: it is read in this list at once, and in every later one once the list is added. */
export function TeachWord({
  text,
  taught,
  onTaught,
}: {
  text: string;
  taught: Garage['words'];
  onTaught: () => void;
}) {
  const { t } = useTranslation();
  const { reader } = useStores();
  const { garage } = useRecord();
  const [word, setWord] = useState(() => likelyWord(text));
  const [means, setMeans] = useState('');
  const [refusal, setRefusal] = useState<string | null>(null);
  const teach = async (): Promise<void> => {
    const reply = await reader.once({
      kind: 'belongings/teach',
      words: { ...garage.words, ...taught },
      word,
      means,
    });
    if (reply.kind === 'refused') setRefusal(reply.refusals[0]?.message ?? null);
    if (reply.kind !== 'belongings/taught') return;
    const fresh = Object.entries(reply.words).filter(([key, value]) => garage.words[key] !== value);
    draftStore.set({ taught: Object.fromEntries(fresh) });
    onTaught();
  };
  return (
    <Block title={t('belongings.teachTitle')} level={3}>
      <p className="quiet">{t('belongings.teachHow')}</p>
      <TextField label={t('belongings.teachWord')} value={word} onChange={setWord} />
      <TextField
        label={t('belongings.teachMeans')}
        hint={t('belongings.teachMeansHint')}
        value={means}
        onChange={setMeans}
        error={refusal}
      />
      <Button isDisabled={word.trim() === '' || means.trim() === ''} onPress={() => void teach()}>
        {t('belongings.teach')}
      </Button>
    </Block>
  );
}

/** The longest word of letters: numbers and sizes are seldom what was not known. */
function likelyWord(text: string): string {
  const words = text.toLowerCase().match(/\p{L}[\p{L}'-]+/gu) ?? [];
  return words.reduce((best, word) => (word.length > best.length ? word : best), '');
}
