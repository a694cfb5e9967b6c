/** How uniforms are laid out within a block of 1,024 iterations. */
export type Design = "latin-hypercube" | "plain";
