"""The lay: how a pattern's pieces lie on a cloth, and what of it is to be bought."""
