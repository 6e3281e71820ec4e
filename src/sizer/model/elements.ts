/** Ids of a sizing form's elements, for what leads to one of them from elsewhere. */

/** Begins the ids of all elements of a piece's form. */
export const formId = (pieceId: string): string => `sizer-${pieceId}`;

/** Of the field for the size. */
export const measureId = (form: string): string => `${form}-measure`;
