using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.Configuration;
using PatternStudio.Studio.Data;
using PatternStudio.Studio.Designs;

namespace PatternStudio.Studio.Tests;

public sealed class StoreTests
{
    [Fact]
    public void The_migrations_for_SQLite_match_the_model()
    {
        using SqliteStudioDbContext context = new SqliteDesignTime().CreateDbContext([]);
        Assert.False(context.Database.HasPendingModelChanges());
    }

    [Fact]
    public void The_migrations_for_PostgreSQL_match_the_model()
    {
        using PostgresStudioDbContext context = new PostgresDesignTime().CreateDbContext([]);
        Assert.False(context.Database.HasPendingModelChanges());
    }

    [Fact]
    public async Task The_data_folder_and_file_are_made_where_there_are_none()
    {
        await using TestStudio studio = await TestStudio.OpenAsync(TestStudio.NewFolder(), true, new() { ["Store:Folder"] = "not/yet/there" });
        Assert.True(File.Exists(Path.Combine(studio.Folder, "not", "yet", "there", "studio.db")));
    }

    [Fact]
    public async Task Readers_do_not_wait_and_foreign_keys_hold()
    {
        await using TestStudio studio = await TestStudio.OpenAsync();
        await using StudioDbContext context = studio.Context();

        Assert.Equal("wal", (await context.Database.SqlQueryRaw<string>("PRAGMA journal_mode").ToListAsync()).Single());
        Assert.Equal(1, (await context.Database.SqlQueryRaw<int>("PRAGMA foreign_keys").ToListAsync()).Single());
        context.Versions.Add(new DesignVersion(Guid.NewGuid(), 1, "of no design", Guid.NewGuid(), studio.Clock.GetUtcNow()));
        await Assert.ThrowsAsync<DbUpdateException>(() => context.SaveChangesAsync());
    }

    [Fact]
    public async Task Everything_is_there_after_a_restart()
    {
        string folder = TestStudio.NewFolder();
        Caller caller;
        Guid id;
        await using (TestStudio before = await TestStudio.OpenAsync(folder))
        {
            caller = await before.NewCallerAsync();
            id = await before.NewDesignAsync(caller);
            await before.Desk.SaveAsync(caller, id, Texts.WrongCloth, 1);
        }

        await using (TestStudio after = await TestStudio.OpenAsync(folder))
        {
            Assert.Equal(caller, await after.Memberships.CallerAsync(caller.AccountId));
            Assert.Equal(Texts.WrongCloth, (await after.Desk.OpenAsync(caller, id))!.Text);
            Assert.Equal(2, (await after.Versions.ListAsync(caller, id)).Count);
        }

        Directory.Delete(folder, recursive: true);
    }

    [Theory]
    [InlineData("Store:Kind", "Cupboard", "The setting Store:Kind is 'Cupboard'. Set it to Sqlite or Postgres.")]
    [InlineData("Store:Kind", "3", "The setting Store:Kind is '3'. Set it to Sqlite or Postgres.")]
    [InlineData("Store:Kind", "Postgres", "Store:Kind is Postgres, but Store:Connection is empty. Give it a connection string such as 'Host=db;Database=studio;Username=studio;Password=…'.")]
    public void A_wrong_setting_is_told_in_words(string key, string value, string message)
    {
        IConfiguration configuration = new ConfigurationBuilder().AddInMemoryCollection([new(key, value)]).Build();
        Assert.Equal(message, Assert.Throws<InvalidOperationException>(() => Store.From(configuration, "/")).Message);
    }
}
