@echo off
rem Starts Clipwitness. Java is looked for in the folder runtime beside this one, in CLIPWITNESS_JAVA (a java.exe), in JAVA_HOME, on the path.
rem CLIPWITNESS_OPTS adds options of Java, -Xmx8g for instance.
setlocal DisableDelayedExpansion
set "JAVA_PROGRAM=java"
if defined JAVA_HOME if exist "%JAVA_HOME%\bin\java.exe" set "JAVA_PROGRAM=%JAVA_HOME%\bin\java.exe"
if defined CLIPWITNESS_JAVA set "JAVA_PROGRAM=%CLIPWITNESS_JAVA%"
if exist "%~dp0..\runtime\bin\java.exe" set "JAVA_PROGRAM=%~dp0..\runtime\bin\java.exe"
"%JAVA_PROGRAM%" -XX:TieredStopAtLevel=1 -XX:+UseSerialGC -XX:MetaspaceSize=96m -Xshare:auto %CLIPWITNESS_OPTS% -cp "%~dp0..\lib\clipwitness.jar" clipwitness.cli.Main %*
exit /b %ERRORLEVEL%
