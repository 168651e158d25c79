import { expect, test } from 'vitest';
import type { Circuit } from '../../../src/job/schema';
import { directoryTexts } from '../../../src/loads/directoryText';
import { demoJob } from '../../support/demos';

const [some] = demoJob('small-house').circuits;
const circuit = (id: string, over: Partial<Circuit>): Circuit => ({ ...some!, id, number: id, ...over });

// 408.4(A): a clear, evident and specific purpose, told apart from all others.
test('a label that names only the kind gets the rooms; none gets the rooms, or is to be traced', () => {
  const texts = directoryTexts([
    circuit('1', { label: 'Lights', serves: ['hall', 'bedroom'] }),
    circuit('2', { label: 'Furnace', serves: ['mechanical'] }),
    circuit('3', { label: '', serves: ['den'] }),
    circuit('4', { label: ' ', serves: 'unknown' }),
    circuit('5', { label: 'Plugs', serves: 'unknown' }),
  ]);
  expect([...texts.values()]).toEqual([
    'Lights: bedroom, hall',
    'Furnace',
    'Outlets: den',
    'To be traced (old 4)',
    'Plugs',
  ]);
});

test('two circuits of one label are told apart by their old numbers', () => {
  const texts = directoryTexts([
    circuit('7', { label: 'Bedroom', number: '7' }),
    circuit('9', { label: 'bedroom', number: '9' }),
    circuit('11', { label: 'Bath', number: '11' }),
  ]);
  expect(texts.get('7')).toBe('Bedroom (old 7)');
  expect(texts.get('9')).toBe('bedroom (old 9)');
  expect(texts.get('11')).toBe('Bath');
});
