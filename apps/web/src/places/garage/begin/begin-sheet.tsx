import { useTranslation } from 'react-i18next';
import { Button } from '../../../look/button.tsx';
import { useRecord, useStores } from '../../../shell/stores.tsx';
import demoUrl from '../../../../../../examples/demo.garage.yaml?url';

export function BeginSheet() {
  const { t } = useTranslation();
  const { replace } = useRecord();
  const { client } = useStores();
  const openDemo = async () => {
    const bytes = new Uint8Array(await (await fetch(demoUrl)).arrayBuffer());
    const reply = await client.once({ kind: 'open', bytes, name: 'demo.garage.yaml' });
    if (reply.kind === 'garage') await replace(t('begin.demoOpened'), reply.garage);
  };
  return (
    <>
      <h1>{t('begin.title')}</h1>
      <Button main onPress={() => void openDemo()}>
        {t('begin.openDemo')}
      </Button>
    </>
  );
}
