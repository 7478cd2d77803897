import { expect, test } from 'vitest';
import { studyJsonSchema } from '../../../packages/study/src/declared/study-document.ts';
import { projectText } from '../../support/project.ts';

test('the schema that others read is the one that study files are checked by', () => {
  expect(JSON.parse(projectText('shared/schemas/study.schema.json'))).toEqual(
    JSON.parse(JSON.stringify(studyJsonSchema())),
  );
});
