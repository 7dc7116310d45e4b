using PatternStudio.Benchmarks;

// No argument: the table of benchmarks. 'chart': layout of a chart beside sfdp. 'shelf': the list of 2 000 designs. 'testers': two hundred testers at once. 'fuzz' and 'compare' run as long as they are told: '--minutes 10'.
double minutes = args is [_, "--minutes", var told] && double.TryParse(told, out double given) ? given : 1;
return args.FirstOrDefault() switch
{
    "fuzz" => LongRun.Fuzz(TimeSpan.FromMinutes(minutes)),
    "compare" => LongRun.Compare(TimeSpan.FromMinutes(minutes)),
    "shelf" => Shelf.Print(),
    "chart" => ChartLayout.Print(),
    "testers" => await Testers.PrintAsync(),
    "read" => OneText.Read(args[1]),
    "work" => OneText.Work(args[1]),
    _ => Table.Print(),
};
