export { countingDocuments } from '@surae/casebook';
