import { useMemo } from 'react';
import { type WallFace, wallFaces } from '../../job/site';
import { byId } from '../../units/order';
import { useJob } from '../selected';

/** Every wall face something can hang on, now or after the finishing, by id. */
export const useFaces = (): readonly WallFace[] => {
  const { site } = useJob();
  return useMemo(
    () => byId([...new Map([...wallFaces(site, 'after'), ...wallFaces(site, 'now')].map((f) => [f.id, f])).values()]),
    [site],
  );
};
