using System.Text;
using PatternStudio.Cli;

Console.OutputEncoding = new UTF8Encoding(encoderShouldEmitUTF8Identifier: false);
using Stream input = Console.OpenStandardInput();
return StudioCli.Run(args, new Terminal(input, Console.Out, Console.Error));
