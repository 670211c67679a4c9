@echo off
rem Starts Clipwitness. Java is looked for in the folder runtime beside this one, in CLIPWITNESS_JAVA (a java.exe), in JAVA_HOME, on the path.
rem CLIPWITNESS_OPTS adds options of Java, -Xmx8g for instance. Written by the rules of cmd, not tried on Windows.
rem Every value stands in quotes, so that blanks, ampersands and brackets do no harm; delayed expansion is off, so that exclamation marks stay.
setlocal EnableExtensions DisableDelayedExpansion

set "CW_JAVA="
for %%J in (java.exe) do set "CW_JAVA=%%~$PATH:J"
if defined JAVA_HOME if exist "%JAVA_HOME%\bin\java.exe" set "CW_JAVA=%JAVA_HOME%\bin\java.exe"
if defined CLIPWITNESS_JAVA set "CW_JAVA=%CLIPWITNESS_JAVA%"
if exist "%~dp0..\runtime\bin\java.exe" set "CW_JAVA=%~dp0..\runtime\bin\java.exe"
if defined CW_JAVA goto size
>&2 echo Java 17 or later was not found. Install it, name it in JAVA_HOME, or take the image that has it inside.
exit /b 2

rem A report of some megabytes is finished before the optimising compiler has saved the time that it takes; one of much more is not.
rem shift /1 leaves the path of this file as it is, and never touches the arguments that are handed on.
:size
set "CW_COMPILER=-XX:TieredStopAtLevel=1"
set "CW_KB=0"
:next
if "%~1"=="" goto start
if not exist "%~1" goto counted
if exist "%~1\*" goto folder
call :add %~z1
goto counted
:folder
for /r "%~1" %%F in (*) do call :add %%~zF
:counted
shift /1
goto next

:start
if %CW_KB% GEQ 200000 set "CW_COMPILER=-XX:+TieredCompilation"
"%CW_JAVA%" -XX:+IgnoreUnrecognizedVMOptions %CW_COMPILER% -XX:+UseSerialGC -XX:MetaspaceSize=96m -Xlog:disable -Xlog:all=error:stderr -Xshare:auto %CLIPWITNESS_OPTS% -cp "%~dp0..\lib\clipwitness.jar" clipwitness.cli.Main %*
exit /b %ERRORLEVEL%

rem Adds bytes to the sum in kilobytes. cmd counts to 2147483647: a file of ten digits is large by itself, and a large sum grows no further.
:add
set "CW_BYTES=%~1"
if not defined CW_BYTES exit /b 0
if not "%CW_BYTES:~9,1%"=="" set "CW_KB=200000"
if %CW_KB% LSS 200000 set /a "CW_KB+=CW_BYTES/1024"
exit /b 0
