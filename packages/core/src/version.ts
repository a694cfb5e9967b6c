/** Engine version, part of every run stamp. A change of results is a change of this and of the changelog. */
export const version = "0.1.0";
