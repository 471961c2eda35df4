/** How a label is drawn for listings. */
export type PictureFormat = 'png' | 'svg';
