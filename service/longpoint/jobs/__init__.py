"""Long work: what is to be done, whose it is, how far it has come and what came of it; two engines that do it."""
