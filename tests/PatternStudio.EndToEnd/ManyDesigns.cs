using System.Globalization;
using Microsoft.Data.Sqlite;

namespace PatternStudio.EndToEnd;

/// <summary>Fills a store with thousands of designs at once: the latest versions of those that are there, over and over, under other titles.</summary>
internal static class ManyDesigns
{
    public static void Fill(string folder, int count)
    {
        using var store = new SqliteConnection($"Data Source={Path.Combine(folder, "studio.db")};Foreign Keys=True");
        store.Open();
        using SqliteTransaction transaction = store.BeginTransaction();
        Run("CREATE TEMP TABLE Source AS SELECT Id, LatestVersion, row_number() OVER (ORDER BY Title) - 1 AS At FROM Designs WHERE Deleted IS NULL");
        Run($"CREATE TEMP TABLE Copies AS WITH RECURSIVE n(i) AS (SELECT 1 UNION ALL SELECT i + 1 FROM n WHERE i < {count.ToString(CultureInfo.InvariantCulture)}) "
            + "SELECT n.i AS Number, s.Id AS SourceId, s.LatestVersion AS Latest, printf('%08X-1111-4111-8111-%012X', n.i, n.i) AS NewId FROM n JOIN Source s ON s.At = n.i % (SELECT count(*) FROM Source)");
        Copy("Designs", "Id", "1 = 1", ("Title", "t.Title || ' ' || c.Number"), ("TitleKey", "t.TitleKey || ' ' || c.Number"), ("SwatchId", "NULL"),
            ("State", "CASE c.Number % 4 WHEN 0 THEN 'Idea' WHEN 1 THEN 'Writing' WHEN 2 THEN 'Testing' ELSE 'Published' END"));
        Copy("Versions", "DesignId", "t.Number = c.Latest");
        Copy("Computations", "DesignId", "t.Version = c.Latest");
        Copy("DesignFaces", "DesignId", "1 = 1");
        transaction.Commit();

        void Copy(string table, string id, string where, params (string Column, string Value)[] others)
        {
            string[] columns = Columns(table);
            string values = string.Join(", ", columns.Select(column => column == id ? "c.NewId" : others.FirstOrDefault(other => other.Column == column).Value ?? $"t.{column}"));
            Run($"INSERT INTO {table} ({string.Join(", ", columns)}) SELECT {values} FROM Copies c JOIN {table} t ON t.{id} = c.SourceId WHERE {where}");
        }

        string[] Columns(string table)
        {
            using SqliteCommand ask = store.CreateCommand();
            ask.CommandText = $"SELECT name FROM pragma_table_info('{table}')";
            using SqliteDataReader answer = ask.ExecuteReader();
            var names = new List<string>();
            while (answer.Read()) names.Add(answer.GetString(0));
            return [.. names];
        }

        void Run(string sql)
        {
            using SqliteCommand command = store.CreateCommand();
            command.Transaction = transaction;
            command.CommandText = sql;
            command.ExecuteNonQuery();
        }
    }
}
