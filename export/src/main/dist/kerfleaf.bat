@echo off
rem Runs kerfleaf with the Java that JAVA_HOME names, else with the one on the path.
setlocal
set "java=java"
if defined JAVA_HOME set "java=%JAVA_HOME%\bin\java"
"%java%" -XX:+UseSerialGC -XX:TieredStopAtLevel=1 -Djava.awt.headless=true -jar "%~dp0kerfleaf.jar" %*
exit /b %ERRORLEVEL%
