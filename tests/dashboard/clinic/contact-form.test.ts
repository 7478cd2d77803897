import { kindOf } from '@surae/casebook';
import { expect, test } from 'vitest';
import { contactTyped } from '../../../apps/dashboard/src/clinic/contact-form.ts';

test('whom to ring is kept as it was typed, without what stands around it', () => {
  const contact = contactTyped(' Practice at the mill ', '+41 (0)00 / 000-00.00 ');
  expect(contact).toEqual({ name: 'Practice at the mill', telephone: '+41 (0)00 / 000-00.00' });
  expect(kindOf('clinic-contact')!.versions[0].safeParse(contact).success).toBe(true);
});

test('without a name or a number nothing is kept', () => {
  for (const [name, telephone] of [
    ['', '000 00 00'],
    ['Practice', ''],
    ['Practice', '12'],
    ['Practice', 'ask at the desk'],
    ['Practice', '+'],
  ]) {
    expect(contactTyped(name, telephone), `${name} ${telephone}`).toBeUndefined();
  }
});
