/** For sentences and titles. Ends in a generic family, so that a file standing alone finds a serif. */
export const serif = '"Source Serif 4 Variable", "Source Serif 4", Georgia, "Times New Roman", serif';

/** For labels, axes and tables. Ends in a generic family. */
export const sans =
  '"Source Sans 3 Variable", "Source Sans 3", "Segoe UI", "Helvetica Neue", Arial, sans-serif';
