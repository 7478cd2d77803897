export { acceptedVisit } from '@surae/casebook';
