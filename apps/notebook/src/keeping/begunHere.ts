/** Why the first version was kept of a plan that was made on this page. */
export const begunHere = "as begun here";
