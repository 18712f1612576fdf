package org.kerfleaf.kernel;

class X {}
