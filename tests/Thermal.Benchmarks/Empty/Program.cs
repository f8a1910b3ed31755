// Does nothing: what is left is the start of a console program, the yardstick for starting one that does something.
return;
