package org.kerfleaf.export;

class X {}
